package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.framing.Member;
import holloway.framing.Notch;
import holloway.framing.Notches;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.Found;
import holloway.house.RulePlace;
import holloway.limits.JoistNotch;
import holloway.limits.Verdict;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** C1, C2, C4: notches that somebody cut before, and the holes of the plan beside them. */
final class NotchedMember implements PlanRule {
  @Override
  public String id() {
    return "notched-member";
  }

  @Override
  public String about() {
    return "A notch that was found must keep within what its joist or stud may lose, and no new"
        + " hole may lie near it. No notch is ever offered.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "law (US), standard (UK), practice elsewhere",
        "IRC R502.8, R602.6; BS 5268-2 and NHBC Standards 6.4 for the UK",
        "of a joist's depth 1/6, 2 in of wood to a hole (US); 1/8, 100 mm along to a hole (UK); of"
            + " a stud's width 25 or 40 % (US)");
  }

  @Override
  public List<Finding> find(Finished finished) {
    Notches notches = Notches.of(finished.house().framed());
    List<Finding> out = new ArrayList<>();
    for (Found.Notch n : notches.nowhere()) {
      out.add(nowhere(n));
    }
    for (Notch n : notches.cut()) {
      Verdict v = judge(n, finished);
      if (!v.allowed()) {
        out.add(cut(n, v, finished));
      }
      for (Finished.Made made : finished.holes()) {
        if (made.site().pierces().contains(n.member().id())) {
          beside(n, made, finished).ifPresent(out::add);
        }
      }
    }
    return out;
  }

  private Finding nowhere(Found.Notch n) {
    return say(
        Severity.PRACTICE,
        Place.of("found notch, line " + n.where().line()),
        Source.PRACTICE,
        false,
        new Said(
            "A notch that you found lies where no joist or stud is known.",
            "nothing within 305 mm",
            "a joist or stud there",
            "Tape it again, or say where that member stands; until then no hole keeps away from"
                + " it."));
  }

  private Finding cut(Notch n, Verdict v, Finished finished) {
    return say(
        v.severity(),
        Place.of(n.member().id(), middle(n)),
        v.from(),
        false,
        new Said(
            "The %s has a notch: %s".formatted(finished.named(n.member()), v.text()),
            Legs.number("%.0f mm deep", n.found().deep().value().toMm())
                + Legs.number(", %.0f mm along", n.found().run().value().toMm()),
            most(finished.place()),
            "It was there before and this plan does not touch it: have a builder or an engineer"
                + " look at it. The local code decides."));
  }

  private Optional<Finding> beside(Notch n, Finished.Made made, Finished finished) {
    long radius = (long) made.hole().diameterMm() * Length.NM_PER_MM / 2;
    Point3 p = n.member().frame().toLocal(made.site().middle());
    Length along = new Length(n.clearAlong(p, radius));
    Length clear = new Length(n.clear(p, radius));
    Verdict v =
        n.upright()
            ? finished.pack().studBesideNotch(along)
            : finished.pack().besideNotch(clear, along);
    if (v.allowed()) {
      return Optional.empty();
    }
    String where = "%s in the %s: ".formatted(made.hole().label(), finished.named(n.member()));
    return Optional.of(
        say(
            v.severity(),
            Place.of(made.hole().id(), made.hole().at()),
            v.from(),
            true,
            new Said(
                where + v.text(),
                Legs.number("%.0f mm of wood between", clear.toMm()),
                n.upright() ? "not in one section" : wood(finished.place()),
                "Do not bore it; plan again without it. The local code decides.")));
  }

  private static String most(RulePlace place) {
    return switch (place) {
      case US ->
          "of a joist's depth 1/6, 1/4 at its end, none in the middle third; of a stud's width 25 %"
              + " where it bears, else 40 %";
      case UK -> "of a joist's depth 1/8, at most 35 mm, at 0.07 to 0.25 of the span";
      case EU, NONE -> "the stricter of the US and UK figures";
    };
  }

  private static String wood(RulePlace place) {
    return switch (place) {
      case US -> "2 in of wood";
      case UK -> "100 mm along the joist";
      case EU, NONE -> "the stricter of the US and UK figures";
    };
  }

  private static Point3 middle(Notch n) {
    Box b = n.cut();
    return n.member().frame().toWorld(b.x().mid(), b.y().mid(), b.z().mid());
  }

  private static Verdict judge(Notch n, Finished finished) {
    Member m = n.member();
    Length deep = n.found().deep().value();
    if (n.upright()) {
      boolean bearing =
          finished.wall(m.owner()).map(w -> w.bearing().value() || w.isOuter()).orElse(true);
      return finished.pack().studNotch(new Length(m.box().y().length()), deep, bearing);
    }
    Interval run = n.run();
    Interval whole = n.whole();
    // Only a floor's joists are known to rest on walls between their ends; they run along x.
    long[] bay =
        whole.equals(m.box().x())
            ? BoredMember.bay(m, run.mid(), finished)
            : new long[] {whole.lo(), whole.hi()};
    boolean low = run.mid() - bay[0] <= bay[1] - run.mid();
    return finished
        .pack()
        .joistNotch(
            new JoistNotch(
                new Length(m.box().z().length()),
                new Length(Math.min(m.box().x().length(), m.box().y().length())),
                deep,
                n.found().run().value(),
                ((Found.InJoist) n.found().cut()).top(),
                new Length(low ? run.lo() - bay[0] : bay[1] - run.hi()),
                new Length(low ? run.hi() - bay[0] : bay[1] - run.lo()),
                new Length(bay[1] - bay[0]),
                run.lo() <= whole.lo() || run.hi() >= whole.hi(),
                BoredMember.make(m, finished)));
  }
}
