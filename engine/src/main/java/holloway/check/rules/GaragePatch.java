package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.geometry.Point3;
import holloway.hollow.AccessPlace;
import holloway.limits.Figure;
import holloway.limits.FireFigures;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** C3-8, C3-9: what a patch takes out of the garage's board against house and attic goes back. */
final class GaragePatch implements PlanRule {
  @Override
  public String id() {
    return "garage-patch";
  }

  @Override
  public String about() {
    return "A patch cut from the garage into the wall or ceiling that parts it from the house or the"
        + " attic: board as thick as is asked there goes back, its joints taped.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "law (US), standard (UK), practice elsewhere",
        FireFigures.GARAGE_BOARD.cited(),
        "1/2 in (12.7 mm) of board; 5/8 in (15.9 mm) Type X below a room");
  }

  @Override
  public List<Finding> find(Finished finished) {
    Set<String> cut =
        finished.plan().works().stream()
            .filter(w -> w.patches() > 0)
            .map(w -> w.id())
            .collect(Collectors.toSet());
    List<Finding> out = new ArrayList<>();
    for (AccessPlace a : finished.house().accesses()) {
      if (cut.contains(a.id()) && finished.isGarage(a.room()) && parts(a, finished)) {
        out.add(finding(a, finished));
      }
    }
    return out;
  }

  /** A ceiling always parts the garage from an attic, a room or the roof's space. */
  private static boolean parts(AccessPlace a, Finished finished) {
    return a.kind() == AccessPlace.Kind.CEILING_PATCH
        || finished
            .house()
            .findHollow(a.hollow())
            .flatMap(h -> finished.wall(h.owner()))
            .map(finished::separates)
            .orElse(false);
  }

  private static boolean roomAbove(Point3 at, Finished finished) {
    for (PlacedRoom r : finished.placed().rooms()) {
      if (r.floorZ() >= at.z() - 50_000_000L && r.outline().contains(at.plan())) {
        return !finished.isGarage(r.name());
      }
    }
    return false;
  }

  private Finding finding(AccessPlace a, Finished finished) {
    boolean ceiling = a.kind() == AccessPlace.Kind.CEILING_PATCH;
    boolean typeX = ceiling && roomAbove(a.at(), finished);
    Figure board = typeX ? FireFigures.GARAGE_CEILING : FireFigures.GARAGE_BOARD;
    FireDuty duty = FireDuty.of(finished.place(), board.cited());
    String kind = typeX ? "Type X board" : "gypsum board";
    return say(
        duty.severity(),
        Place.of(a.id(), a.at()),
        duty.source(),
        false,
        new Said(
            "A patch is cut into the %s of the %s, which parts it from %s."
                .formatted(
                    ceiling ? "ceiling" : "wall",
                    a.room(),
                    typeX ? "the room above" : ceiling ? "what is above" : "the house"),
            "one patch",
            board.said() + " of " + kind,
            "Put back "
                + kind
                + " at least "
                + board.said()
                + " thick and as thick as what is there, on backing, its joints taped. The local"
                + " code decides."));
  }
}
