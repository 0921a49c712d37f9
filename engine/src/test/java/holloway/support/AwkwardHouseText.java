package holloway.support;

import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * A house file with awkward features, drawn by chance, the same for the same seed: rooms that are
 * no rectangles, walls of every kind, storeys that overhang or set back, several roofs, whatever
 * else a catalogue of houses has. Invented houses that nobody lives in. What is drawn is meant to
 * be valid, but not each combination is.
 */
public final class AwkwardHouseText {
  /**
   * A house file, the file of what was found beside it if any, and what was drawn.
   *
   * @param runs how many runs it wants
   */
  public record Drawn(String house, Optional<String> found, Set<String> features, int runs) {}

  private AwkwardHouseText() {}

  /** The house of a seed. */
  public static Drawn of(long seed) {
    AwkwardDraw d = new AwkwardDraw(seed);
    AwkwardPlan plan = new AwkwardPlan(d, head(d, seed));
    plan.draw();
    AwkwardWalls walls = new AwkwardWalls(d, plan);
    walls.draw();
    AwkwardRoofs roofs = new AwkwardRoofs(d, plan);
    roofs.draw();
    AwkwardVoids voids = new AwkwardVoids(d, plan);
    voids.draw();
    AwkwardWants wants = new AwkwardWants(d, plan);
    wants.draw();
    return new Drawn(d.text(), wants.found(), d.features(), wants.runs());
  }

  /** Gives the thickness of inner walls, mm. */
  private static int head(AwkwardDraw d, long seed) {
    d.line("house: Awkward %d", seed);
    d.line("place: %s", d.pick("us", "us", "uk", "none"));
    d.line("built: %d", 1885 + d.upTo(135));
    d.line("framing: %s", d.maybe(15, "balloon framing") ? "balloon" : "platform");
    if (d.maybe(25, "layout from elsewhere")) {
      d.line("layout-from: %s", d.pick("south-east", "north-west", "north-east"));
    }
    d.line("outer-walls: %s", outerWalls(d, seed));
    int thick = d.maybe(20, "layered lining") ? 150 : 120;
    d.line("inner-walls: %s", innerWalls(d, thick));
    return thick;
  }

  private static String outerWalls(AwkwardDraw d, long seed) {
    if (d.maybe(25, "masonry outside")) {
      return "{ kind: %s, thickness: %d mm }"
          .formatted(d.pick("masonry", "furred", "dabbed"), 200 + 10 * d.upTo(12));
    }
    String fill = d.pick("empty", "faced-batt", "unfaced-batt", "dense-packed", "foam", "unknown");
    return "{ studs: %s, every: %s, fill: %s%s }"
        .formatted(d.pick("2x4", "2x6"), d.spacing(), fill, battens(d, seed));
  }

  /**
   * By a chance of its own, so that the rest of the house is drawn as without it; in houses beyond
   * those that the profile turns and mirrors.
   */
  private static String battens(AwkwardDraw d, long seed) {
    Random r = new Random(seed * 7919 + 13);
    if (r.nextInt(100) >= 20) {
      return "";
    }
    d.has("service layer");
    return ", battens: { depth: %d mm, run: %s }"
        .formatted(20 + 10 * r.nextInt(5), r.nextBoolean() ? "level" : "upright");
  }

  private static String innerWalls(AwkwardDraw d, int thick) {
    String studs = d.maybe(15, "steel studs") ? "steel 3-5/8 in" : d.pick("2x4", "2x4", "50x75");
    String lining = thick > 120 ? ", lining: [board 12.5 mm, panel 15 mm]" : "";
    String plates = d.maybe(20, "single top plate") ? ", top-plate: single" : "";
    String blocks = d.maybe(12, "blocks across bays") ? ", blocks-at: [1200 mm]" : "";
    return "{ studs: %s, every: %s, thickness: %d mm, fill: %s%s%s%s }"
        .formatted(
            studs,
            d.spacing(),
            thick,
            d.chance(80) ? "empty" : "unfaced-batt",
            lining,
            plates,
            blocks);
  }
}
