package holloway.survey;

import java.math.BigInteger;

/** An exact fraction, to check sums of doubles against. */
record Fraction(BigInteger over, BigInteger under) {
  static final Fraction ZERO = of(0, 1);
  static final Fraction ONE = of(1, 1);

  Fraction {
    BigInteger g = over.gcd(under).multiply(BigInteger.valueOf(under.signum()));
    over = over.divide(g);
    under = under.divide(g);
  }

  static Fraction of(long over, long under) {
    return new Fraction(BigInteger.valueOf(over), BigInteger.valueOf(under));
  }

  Fraction plus(Fraction o) {
    return new Fraction(
        over.multiply(o.under).add(o.over.multiply(under)), under.multiply(o.under));
  }

  Fraction minus(Fraction o) {
    return plus(new Fraction(o.over.negate(), o.under));
  }

  Fraction times(Fraction o) {
    return new Fraction(over.multiply(o.over), under.multiply(o.under));
  }

  Fraction dividedBy(Fraction o) {
    return new Fraction(over.multiply(o.under), under.multiply(o.over));
  }

  double value() {
    return new java.math.BigDecimal(over)
        .divide(new java.math.BigDecimal(under), java.math.MathContext.DECIMAL64)
        .doubleValue();
  }
}
