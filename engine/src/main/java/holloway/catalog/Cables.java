package holloway.catalog;

import holloway.units.Length;
import java.util.List;

/**
 * The cable kinds that can be asked for. Sizes: trade-facts A8-9 to A8-13; bends: A2-3, A2-7;
 * connector width of a ready-made lead is from memory.
 */
public final class Cables {
  static final List<Cable> ALL =
      List.of(
          copper("cat5e", 4.8, false),
          copper("cat6", 6.1, false),
          copper("cat6a", 8.0, false),
          new Cable(
              "om4",
              Length.mm(4.8),
              Length.mm(13.0),
              Length.mm(50),
              true,
              true,
              false,
              "A8-12, A2-7; sleeve over the ready-made end from memory"),
          new Cable(
              "os2",
              Length.mm(4.8),
              Length.mm(13.0),
              Length.mm(50),
              true,
              true,
              false,
              "A8-12, A2-7; sleeve over the ready-made end from memory"),
          new Cable(
              "rg6", Length.mm(7.6), Length.mm(7.6), Length.mm(76), false, false, false, "A8-13"),
          copper("outdoor-cat6", 6.5, true),
          new Cable(
              "outdoor-fibre",
              Length.mm(5.0),
              Length.mm(13.0),
              Length.mm(100),
              true,
              true,
              true,
              "from memory"));

  private Cables() {}

  public static List<Cable> all() {
    return ALL;
  }

  private static Cable copper(String kind, double outsideMm, boolean outdoor) {
    Length outside = Length.mm(outsideMm);
    return new Cable(
        kind,
        outside,
        outside,
        Length.mm(4 * outsideMm),
        false,
        false,
        outdoor,
        outdoor ? "from memory" : "A8-9 to A8-11, A2-3");
  }
}
