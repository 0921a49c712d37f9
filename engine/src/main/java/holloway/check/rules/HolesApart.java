package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.framing.Member;
import holloway.limits.Verdict;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** C1-2, C4-1: two holes in one member leave wood between them. */
final class HolesApart implements PlanRule {
  @Override
  public String id() {
    return "holes-apart";
  }

  @Override
  public String about() {
    return "Two holes in one joist, stud or plate must lie far enough apart.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "law for joists (US), practice else",
        "IRC R502.8.1; BS 5268-2 for the UK",
        "2 in of wood (US joists), three diameters else");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    List<Finished.Made> holes = finished.holes();
    for (int i = 0; i < holes.size(); i++) {
      for (int j = i + 1; j < holes.size(); j++) {
        pair(holes.get(i), holes.get(j), finished).ifPresent(out::add);
      }
    }
    return out;
  }

  private Optional<Finding> pair(Finished.Made one, Finished.Made other, Finished finished) {
    Length centres = new Length(one.site().middle().distanceTo(other.site().middle()));
    Length a = Length.mm((long) one.hole().diameterMm());
    Length b = Length.mm((long) other.hole().diameterMm());
    for (Member m : finished.pierced(one.site())) {
      if (!other.site().pierces().contains(m.id()) || !m.kind().isTimber()) {
        continue;
      }
      Verdict v =
          BoredMember.spans(m.kind())
              ? finished.pack().joistSpacing(centres, a, b)
              : finished.pack().plateSpacing(centres, a, b);
      if (!v.allowed()) {
        return Optional.of(finding(one, other, finished.named(m), v, centres));
      }
    }
    return Optional.empty();
  }

  private Finding finding(
      Finished.Made one, Finished.Made other, String member, Verdict v, Length centres) {
    String both = one.hole().label() + " and " + other.hole().label() + " in the " + member;
    return say(
        v.severity(),
        Place.of(other.hole().id(), other.hole().at()),
        v.from(),
        true,
        new Said(
            both + ": " + v.text(),
            Legs.number("%.0f mm between centres", centres.toMm()),
            entry().limit(),
            "Put both sets of cables through one larger hole, or move one."));
  }
}
