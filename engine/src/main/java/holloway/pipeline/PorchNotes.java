package holloway.pipeline;

import holloway.framing.Deck;
import holloway.framing.Framing;
import holloway.geometry.Point3;
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
      if (p.porch().boarded() && !isBeforeABay(placed, p) && !isBeforeJoists(decks, p)) {
        out.add(note(p));
      }
    }
    return out;
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
    return new Plan.FindingLine(
        "under-the-roof", "note", Optional.empty(), "as stated in the house file", text);
  }
}
