package holloway.pipeline;

import holloway.framing.Deck;
import holloway.framing.Framing;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.Porch;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.survey.PlacedPorch;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What stands behind the ledger of a boarded porch, for {@code check HOUSE}. */
final class PorchNotes {
  /** Plates and a little more: a hole out of a bay ends below them. */
  private static final long PLATES = 90_000_000;

  private PorchNotes() {}

  static List<Plan.FindingLine> of(Placed placed) {
    List<Plan.FindingLine> out = new ArrayList<>();
    List<PlacedPorch> all = PlacedPorch.of(placed);
    List<Deck> decks = all.isEmpty() ? List.of() : Framing.of(placed).decks();
    for (PlacedPorch p : all) {
      out.addAll(openings(placed, p));
      if (p.porch().boarded() && !isBeforeABay(placed, p) && !isBeforeJoists(decks, p)) {
        out.add(note(p));
      }
    }
    return out;
  }

  /** Openings of any wall in that plane that the porch's roof would meet. */
  private static List<Plan.FindingLine> openings(Placed placed, PlacedPorch p) {
    long low = p.frame().origin().z();
    Interval roof = new Interval(low, low + p.joists().hi() + atWall(p));
    List<Plan.FindingLine> out = new ArrayList<>();
    for (Wall w : placed.walls()) {
      for (Wall.WallOpening o : w.isOuter() ? w.openings() : List.<Wall.WallOpening>of()) {
        Point3 mid = w.world(o.s().mid(), w.outside() == 0 ? 0 : w.thickness(), o.z().lo());
        Point3 at = p.frame().toLocal(mid);
        Interval z = new Interval(mid.z(), mid.z() + o.z().length());
        boolean before = at.x() > 0 && at.x() < p.length() && Math.abs(at.y()) < 60_000_000;
        if (before && z.overlaps(roof)) {
          out.add(meets(p, o));
        }
      }
    }
    return out;
  }

  private static long atWall(PlacedPorch p) {
    return p.porch().cover() == Porch.Cover.SHED ? p.rise() : 0;
  }

  private static Plan.FindingLine meets(PlacedPorch p, Wall.WallOpening o) {
    return line(
        String.format(
            Locale.ROOT,
            "The roof of porch '%s' would meet the wall where the opening of line %d is: tape its"
                + " 'out' and pitch again, or that opening's sill.",
            p.porch().name(),
            o.opening().where().line()));
  }

  private static long middle(PlacedPorch p) {
    return p.frame().origin().z() + p.joists().mid();
  }

  private static boolean isBeforeABay(Placed placed, PlacedPorch p) {
    return placed.walls().stream()
        .filter(w -> w.isOuter() && w.outside() == p.wall().outside())
        .filter(w -> Math.abs(p.frame().toLocal(outside(w)).y()) < 60_000_000)
        .anyMatch(
            w -> {
              long z = middle(p) - w.frame().origin().z();
              return z > 0 && z < w.height() - PLATES;
            });
  }

  private static Point3 outside(Wall w) {
    return w.world(0, w.outside() == 0 ? 0 : w.thickness(), 0);
  }

  private static boolean isBeforeJoists(List<Deck> decks, PlacedPorch p) {
    return decks.stream()
        .anyMatch(
            d -> {
              long z = middle(p) - d.frame().origin().z();
              return z > d.joistZ().lo() && z < d.joistZ().hi();
            });
  }

  private static Plan.FindingLine note(PlacedPorch p) {
    String text =
        String.format(
            Locale.ROOT,
            "The joists of porch '%s' lie before plates or above the wall, %.0f mm over the floor"
                + " inside: no hole leads into the void over its boards from the house. Cable gets"
                + " there along the outside, up through the boards beside the wall; is its 'height'"
                + " taped from the floor inside, not from the porch's own?",
            p.porch().name(),
            (p.porch().height().value().nm() + p.joists().mid()) / 1e6);
    return line(text);
  }

  private static Plan.FindingLine line(String text) {
    return new Plan.FindingLine(
        "under-the-roof", "note", Optional.empty(), "as stated in the house file", text);
  }
}
