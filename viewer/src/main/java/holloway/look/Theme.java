package holloway.look;

import java.util.List;

/**
 * The two grounds. Dusk is the usual one: an attic is dark, and what is lit is the way. Light is
 * for paper. Runs have the palette that Okabe and Ito published for all kinds of colour vision, in
 * dusk with white for black; a dark rim lets its pale colours stand out on paper.
 *
 * @param ground below and behind everything; {@code groundLow} towards the lower edge
 * @param clay members of timber, in walls; {@code clayFlat} in floors and roofs
 * @param slate masonry, slab; {@code thing} what stands in the way
 * @param veil finishes
 * @param glow of a hollow that a run uses
 * @param cut the face of what a slice cuts
 * @param ink words and lines; {@code quiet} those that matter less
 * @param plate under words, so that they are readable anywhere
 * @param pin the ring of a hole
 * @param warn of a finding that is law
 * @param additive glows add light; else they lay colour over
 */
public record Theme(
    String name,
    int ground,
    int groundLow,
    int clay,
    int clayFlat,
    int slate,
    int thing,
    int veil,
    int glow,
    int cut,
    int ink,
    int quiet,
    int plate,
    int pin,
    int warn,
    boolean additive,
    List<Integer> runs) {
  /** What a run's colour is mixed with at its rim, and how much of it. */
  public static final int RIM = 0x0B0E14;

  public static final double RIM_SHARE = 0.68;

  public static final Theme DUSK =
      new Theme(
          "dusk",
          0x171B24,
          0x0F1218,
          0x8C7565,
          0x75695F,
          0x5B6673,
          0x6E5A6B,
          0x9FB0C4,
          0xFFB45E,
          0xC9B49C,
          0xF2EDE4,
          0xA9B0BA,
          0x10141B,
          0xF2EDE4,
          0xFF8A5B,
          true,
          List.of(0xE69F00, 0x56B4E9, 0x009E73, 0xF0E442, 0x0072B2, 0xD55E00, 0xCC79A7, 0xF4F1EA));

  public static final Theme LIGHT =
      new Theme(
          "light",
          0xFFFFFF,
          0xF4F2EE,
          0xCDB9A6,
          0xD8CBBD,
          0xB4BCC6,
          0xC4B2C1,
          0x8795A6,
          0xF2A33C,
          0x8A7460,
          0x1B1F27,
          0x5A6270,
          0xFFFFFF,
          0x1B1F27,
          0xB03A00,
          false,
          List.of(0xE69F00, 0x56B4E9, 0x009E73, 0xF0E442, 0x0072B2, 0xD55E00, 0xCC79A7, 0x2B2B2B));

  public Theme {
    runs = List.copyOf(runs);
  }

  /** The colour of the n-th run; from the ninth on the dash pattern differs too. */
  public int run(int n) {
    return runs.get(Math.floorMod(n, runs.size()));
  }

  /** Tape lines: on paper the colour of light is too pale for a line. */
  public int tape() {
    return additive ? glow : Rgb.mix(glow, ink, 0.5);
  }

  /** The rim of a run of a colour, which sets it off from what it lies on. */
  public static int rim(int colour) {
    return Rgb.mix(colour, RIM, RIM_SHARE);
  }

  /** The pattern of the n-th run: colour and pattern together come again after 64 runs. */
  public static Dash dash(int n) {
    Dash[] all = Dash.values();
    int round = Math.floorDiv(n, all.length);
    return all[Math.floorMod(n + round, all.length)];
  }
}
