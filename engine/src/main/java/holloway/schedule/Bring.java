package holloway.schedule;

import java.util.Locale;

/**
 * One thing taken along.
 *
 * @param sizeMm diameter of a bit, else 0
 * @param amount how many, or metres of string
 * @param name of a box or a cable, else empty
 */
public record Bring(Item item, int sizeMm, double amount, String name)
    implements Comparable<Bring> {
  /** What can be on a bring list. Reusable things are carried once, however often used. */
  public enum Item {
    LIGHT(true),
    GLASSES(true),
    GLOVES(true),
    RESPIRATOR(true),
    COVERALL(true),
    KNEE_PADS(true),
    PLANKS(true),
    LADDER(true),
    STEP_LADDER(true),
    TAPE_MEASURE(true),
    STUD_FINDER(true),
    DRILL(true),
    HAMMER_DRILL(true),
    ANGLE_DRILL(true),
    PILOT_BIT(true),
    LOCATOR_WIRE(true),
    WOOD_BIT(true),
    MASONRY_BIT(true),
    FLEX_BIT(true),
    BIT_EXTENSION(true),
    SAW(true),
    PRY_BAR(true),
    FISH_RODS(true),
    STRING(false),
    CABLE_BOX(true),
    LEAD(false),
    MARKER(true),
    CUTTERS(true),
    SUPPORT(false),
    NAIL_PLATE(false),
    FIRE_SEALANT(true),
    OUTDOOR_SEALANT(true),
    PATCH_KIT(true),
    TERMINATION_TOOL(true),
    OUTLET_PLATE(false),
    LABELS(true),
    TESTER(true),
    FIBRE_TESTER(true);

    private final boolean reusable;

    Item(boolean reusable) {
      this.reusable = reusable;
    }

    public boolean reusable() {
      return reusable;
    }

    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  static Bring of(Item item) {
    return new Bring(item, 0, 1, "");
  }

  static Bring bit(Item item, int sizeMm) {
    return new Bring(item, sizeMm, 1, "");
  }

  /** What tells two things apart in a bag. */
  public String key() {
    return item.ordinal() + 100 + "/" + "%03d".formatted(sizeMm) + "/" + name;
  }

  @Override
  public int compareTo(Bring o) {
    return key().compareTo(o.key());
  }
}
