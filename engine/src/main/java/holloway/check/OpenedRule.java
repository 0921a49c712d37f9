package holloway.check;

import holloway.geometry.Box;
import holloway.hollow.AccessPlace;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.house.Conduit;
import holloway.plan.Plan;
import holloway.request.Effort;
import holloway.survey.Wall;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is opened without being cut: skirting taken off, ceiling tiles or a panel lifted out, boards
 * lifted, an existing box or register. Whoever lays cable there has paid for it, at its price, and
 * no cable lies behind skirting where a door is.
 */
final class OpenedRule implements Rule {
  private static final double MINUTES = 0.001;
  private static final double BESIDE_MM = 60;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Walk.At at : evidence.steps()) {
      Optional<Hollow> hollow = at.isLeg() ? evidence.hollow(at) : Optional.empty();
      hollow.ifPresent(h -> judgeLeg(at, h, evidence, charge));
    }
    evidence.plan().works().stream()
        .filter(w -> w.kind().equals("access"))
        .forEach(w -> judgePrice(w, evidence, charge));
  }

  private void judgeLeg(Walk.At at, Hollow h, Evidence evidence, Charge charge) {
    if (h.kind() == HollowKind.SKIRTING) {
      needs(at, "skirting/" + h.owner() + "/set-up", evidence, charge);
      needs(at, h.id() + "/off", evidence, charge);
      judgeDoors(at, evidence, charge);
    } else if (h.kind() == HollowKind.LOWERED_CEILING) {
      needs(at, h.id() + "/opened", evidence, charge);
    } else if (h.id().startsWith("conduit/")) {
      evidence
          .conduit(h)
          .filter(Conduit::dug)
          .ifPresent(c -> needs(at, h.id() + "/dug", evidence, charge));
      if (h.kind() == HollowKind.SPAN) {
        needs(at, h.id() + "/strung", evidence, charge);
      }
    }
  }

  private static void needs(Walk.At at, String work, Evidence evidence, Charge charge) {
    if (evidence.work(work).isEmpty()) {
      charge.step(at, "lies where nobody gets in before '%s', and no work does that", work);
    }
  }

  /** An opening that stands on the floor has no skirting in front of it. */
  private void judgeDoors(Walk.At at, Evidence evidence, Charge charge) {
    for (Wall w : evidence.house().framed().placed().walls()) {
      for (Wall.WallOpening o : w.openings()) {
        long beside = Math.round(BESIDE_MM * 1e6);
        Box box =
            new Box(
                o.s().lo(), o.s().hi(), -beside, w.thickness() + beside, o.z().lo(), o.z().hi());
        Solid gap = new Solid(w.frame(), box);
        if (at.spans().stream().anyMatch(s -> gap.entered(s, 1))) {
          charge.step(at, "lies behind skirting across an opening of wall %s", w.id());
          return;
        }
      }
    }
  }

  private void judgePrice(Plan.PlannedWork work, Evidence evidence, Charge charge) {
    OptionalDouble due = due(work.id(), evidence);
    if (due.isEmpty()) {
      charge.plan(work.id(), "opens nothing that the house has");
    } else if (Math.abs(due.getAsDouble() - work.minutes()) > MINUTES) {
      charge.plan(
          work.id(),
          "says %.4f min, by the effort table it is %.4f",
          work.minutes(),
          due.getAsDouble());
    }
  }

  private OptionalDouble due(String id, Evidence evidence) {
    Effort effort = evidence.request().effort();
    for (AccessPlace a : evidence.house().accesses()) {
      if (a.id().equals(id)) {
        return OptionalDouble.of(effort.get(key(a.kind())));
      }
    }
    for (Hollow h : evidence.house().hollows()) {
      if (id.equals(h.id() + "/dug") && evidence.conduit(h).isPresent()) {
        double metres = evidence.conduit(h).get().length().value().toMm() / 1000;
        return OptionalDouble.of(metres * effort.get("trench.metre"));
      } else if (id.equals(h.id() + "/strung")) {
        return OptionalDouble.of(effort.get("span.set-up"));
      } else if (h.kind() == HollowKind.SKIRTING) {
        if (id.equals("skirting/" + h.owner() + "/set-up")) {
          return OptionalDouble.of(effort.get("skirting.room"));
        }
        if (id.equals(h.id() + "/off")) {
          double metres = new Solid(h.frame(), h.clear()).extent(0) / 1000;
          return OptionalDouble.of(metres * effort.get("skirting.metre"));
        }
      } else if (h.kind() == HollowKind.LOWERED_CEILING && id.equals(h.id() + "/opened")) {
        return OptionalDouble.of(effort.get("open.tiles"));
      }
    }
    return OptionalDouble.empty();
  }

  private static String key(AccessPlace.Kind kind) {
    return switch (kind) {
      case LIFTED_BOARDS -> "lift.boards";
      case DATA_BOX -> "open.box";
      case REGISTER -> "open.register";
      case WALL_PATCH, CEILING_PATCH -> "patch.wall-board";
    };
  }
}
