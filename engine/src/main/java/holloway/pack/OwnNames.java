package holloway.pack;

import holloway.house.House;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.house.WallSpec;
import holloway.plan.Plan;
import holloway.report.Sheet;
import holloway.request.Request;
import holloway.schedule.Label;
import holloway.schedule.Labels;
import holloway.survey.Placed;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Names that the house file or the plan gives: they stand on the page as they are. */
final class OwnNames {
  private final Set<String> out = new HashSet<>();

  private OwnNames() {}

  static Set<String> of(Sheet sheet) {
    OwnNames names = new OwnNames();
    names.out.addAll(of(sheet.placed(), sheet.request()));
    names.plan(sheet.plan());
    for (Label l : Labels.of(sheet.plan(), sheet.request(), sheet.placed())) {
      names.out.add(l.id());
    }
    return Set.copyOf(names.out);
  }

  /** Of the house alone. */
  static Set<String> of(Placed placed, Request request) {
    OwnNames names = new OwnNames();
    names.house(placed.house());
    placed.walls().forEach(w -> names.out.add(w.id()));
    request.outlets().forEach(o -> names.out.add(o.name()));
    return Set.copyOf(names.out);
  }

  private void house(House house) {
    out.add(house.name());
    house.levels().forEach(l -> out.add(l.name()));
    house.rooms().forEach(r -> out.add(r.name()));
    house.roofs().forEach(this::roof);
    house.chases().forEach(c -> out.add(c.name()));
    house.conduits().forEach(c -> out.add(c.name()));
    house.soffits().forEach(s -> out.add(s.name()));
    house.stairs().forEach(s -> out.add(s.name()));
    house.beams().forEach(b -> out.add(b.name()));
    house.porches().forEach(p -> out.add(p.name()));
    house.walls().stream().map(WallSpec::name).flatMap(Optional::stream).forEach(out::add);
  }

  /** Behind knee walls a roof has an attic on each side. */
  private void roof(Roof r) {
    out.add(r.name());
    for (Side side : Side.values()) {
      out.add(r.name() + " " + side.word() + " side");
    }
  }

  private void plan(Plan plan) {
    plan.runs()
        .forEach(
            r -> {
              out.add(r.id());
              out.add(r.cable());
            });
    plan.unrouted().forEach(u -> out.add(u.id()));
    plan.holes()
        .forEach(
            h -> {
              out.add(h.id());
              out.add(h.label());
            });
  }
}
