package holloway.look;

/** Colours as whole numbers, 0xAARRGGBB or 0xRRGGBB, and their parts from 0 to 1. */
public final class Rgb {
  private Rgb() {}

  public static float red(int c) {
    return (c >> 16 & 255) / 255f;
  }

  public static float green(int c) {
    return (c >> 8 & 255) / 255f;
  }

  public static float blue(int c) {
    return (c & 255) / 255f;
  }

  public static float alpha(int c) {
    return (c >>> 24) / 255f;
  }

  /** The same colour, so much opaque, 0 to 1. */
  public static int with(int c, double alpha) {
    return (int) Math.round(Math.max(0, Math.min(1, alpha)) * 255) << 24 | c & 0xFFFFFF;
  }

  public static int opaque(int c) {
    return c | 0xFF000000;
  }

  /** From {@code a} (0) to {@code b} (1), part by part. */
  public static int mix(int a, int b, double t) {
    int out = 0;
    for (int shift = 0; shift <= 24; shift += 8) {
      double from = a >> shift & 255;
      double to = b >> shift & 255;
      out |= (int) Math.round(from + (to - from) * t) << shift;
    }
    return out;
  }

  /** How bright a colour seems, 0 to 1 (relative luminance of WCAG 2). */
  public static double luminance(int c) {
    return 0.2126 * linear(red(c)) + 0.7152 * linear(green(c)) + 0.0722 * linear(blue(c));
  }

  /** Contrast of two colours, 1 to 21 (WCAG 2). */
  public static double contrast(int a, int b) {
    double la = luminance(a);
    double lb = luminance(b);
    return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
  }

  /** The amount of light of one part of an sRGB colour. */
  public static double linear(double s) {
    return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
  }
}
