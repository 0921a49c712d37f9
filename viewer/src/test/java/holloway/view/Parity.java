package holloway.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point3;
import holloway.pipeline.PlannedHouse;
import holloway.plan.Plan;
import holloway.schedule.HoleCard;
import java.util.List;
import org.joml.Vector3fc;

/** What is drawn of a plan has the numbers of the plan and of the pack's cards. */
public final class Parity {
  /** Floats in metres hold a house to this. */
  private static final double METRES = 2e-4;

  private Parity() {}

  public static void check(PlannedHouse house) {
    Pictures pictures = new Pictures(house);
    Plan plan = house.plan();
    runs(plan, pictures);
    assertEquals(
        plan.holes().stream().map(Plan.PlannedHole::label).toList(),
        pictures.model().pins().stream().map(Pin::label).toList());
    for (Plan.PlannedHole h : plan.holes()) {
      hole(h, pictures, house);
    }
  }

  private static void runs(Plan plan, Pictures pictures) {
    List<Cable> cables = pictures.model().cables();
    assertEquals(
        plan.runs().stream().map(Plan.PlannedRun::id).toList(),
        cables.stream().map(Cable::id).toList());
    for (int i = 0; i < cables.size(); i++) {
      Plan.PlannedRun r = plan.runs().get(i);
      Cable c = cables.get(i);
      double way = 0;
      for (int k = 0; k + 1 < c.points().size(); k++) {
        way += c.points().get(k).distance(c.points().get(k + 1));
      }
      assertEquals(r.routeM(), way, 0.021, r.id());
      assertEquals(pictures.words().cable(r.routeM()), c.length(), r.id());
      List<Point3> last = r.steps().get(r.steps().size() - 1).path();
      near(r.steps().get(0).path().get(0), c.points().get(0), r.id());
      near(last.get(last.size() - 1), c.points().get(c.points().size() - 1), r.id());
    }
  }

  private static void hole(Plan.PlannedHole h, Pictures pictures, PlannedHouse house) {
    Pin pin = pictures.model().findPin(h.id()).orElseThrow();
    HoleSheet sheet = pictures.findHole(h.id()).orElseThrow();
    HoleCard card = house.cards().get(h.id());
    assertEquals(h.runs(), pin.runs(), h.label());
    if (!h.axis().isEmpty()) {
      near(h.axis().get(0), pin.a(), h.label());
      near(h.axis().get(h.axis().size() - 1), pin.b(), h.label());
    }
    if (card == null) {
      return;
    }
    tapes(sheet.tapesA(), card.sideA(), h.label());
    tapes(sheet.tapesB(), card.sideB(), h.label());
  }

  /** Each line drawn says what a line of the card says, and is as long as it says. */
  private static void tapes(List<TapeMark> drawn, List<String> told, String label) {
    for (TapeMark t : drawn) {
      assertTrue(
          told.stream().anyMatch(c -> c.contains(t.length()) && c.contains(t.landmark())),
          label + " draws " + t + ", the card has " + told);
    }
    boolean measured = told.stream().anyMatch(t -> Character.isDigit(t.charAt(0)));
    assertEquals(measured, !drawn.isEmpty(), label + told);
  }

  private static void near(Point3 p, Vector3fc drawn, String what) {
    assertEquals(p.x() / 1e9, drawn.x(), METRES, what);
    assertEquals(p.y() / 1e9, drawn.y(), METRES, what);
    assertEquals(p.z() / 1e9, drawn.z(), METRES, what);
  }
}
