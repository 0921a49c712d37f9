package holloway.look;

/**
 * How colours look to eyes without one kind of cone: the matrices for full severity of Machado,
 * Oliveira and Fernandes, "A Physiologically-based Model for Simulation of Color Vision
 * Deficiency", IEEE TVCG 15(6), 2009, on linear light. Differences are CIE 1976 (L*, a*, b*).
 */
public enum Eyes {
  USUAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
  NO_LONG(
      0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
  NO_MIDDLE(
      0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
  NO_SHORT(
      1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

  private final double[] m;

  Eyes(double... m) {
    this.m = m;
  }

  /** How far apart two colours are; 2.3 is just seen side by side. */
  public double apart(int a, int b) {
    double[] p = lab(a);
    double[] q = lab(b);
    return Math.sqrt(
        Math.pow(p[0] - q[0], 2) + Math.pow(p[1] - q[1], 2) + Math.pow(p[2] - q[2], 2));
  }

  private double[] lab(int c) {
    double[] in = {Rgb.linear(Rgb.red(c)), Rgb.linear(Rgb.green(c)), Rgb.linear(Rgb.blue(c))};
    double[] s = new double[3];
    for (int i = 0; i < 3; i++) {
      double sum = m[3 * i] * in[0] + m[3 * i + 1] * in[1] + m[3 * i + 2] * in[2];
      s[i] = Math.max(0, Math.min(1, sum));
    }
    double x = bent((0.4124 * s[0] + 0.3576 * s[1] + 0.1805 * s[2]) / 0.95047);
    double y = bent(0.2126 * s[0] + 0.7152 * s[1] + 0.0722 * s[2]);
    double z = bent((0.0193 * s[0] + 0.1192 * s[1] + 0.9505 * s[2]) / 1.08883);
    return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
  }

  private static double bent(double t) {
    return t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16.0 / 116;
  }
}
