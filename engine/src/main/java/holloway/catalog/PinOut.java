package holloway.catalog;

import java.util.List;

/**
 * The eight pins of a jack in both schemes: trade-facts A7-1 to A7-8 (TIA-568). Homes use A (A7-9,
 * TIA-570-A); what matters is one scheme at both ends of every cable.
 */
public enum PinOut {
  A("white/green", "green", "white/orange", "orange"),
  B("white/orange", "orange", "white/green", "green");

  /** The scheme unless the house file says otherwise: TIA-570-A for homes (A7-9). */
  public static final PinOut USUAL = A;

  private final List<String> pins;

  PinOut(String one, String two, String three, String six) {
    this.pins = List.of(one, two, three, "blue", "white/blue", six, "white/brown", "brown");
  }

  /** Colours of pins 1 to 8. */
  public List<String> pins() {
    return pins;
  }
}
