package holloway.check.rules;

import holloway.catalog.Cable;
import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.hollow.HollowKind;
import holloway.house.Conduit;
import holloway.limits.SignalFigures;
import holloway.limits.TubeFill;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A6-1 to A6-3: how full an existing tube gets. Practice: the code's table is for power. */
final class TubeTooFull implements PlanRule {
  @Override
  public String id() {
    return "tube-too-full";
  }

  @Override
  public String about() {
    return "The cables of the plan in an existing tube, and those stated to lie in it (holds), against"
        + " the usual share of its section. Law for power wiring, practice for data cable.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "practice", SignalFigures.FILL_MORE.cited(), "53, 31, 40 % for 1, 2, 3 cables and more");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    for (Conduit c : finished.placed().house().conduits()) {
      List<Double> cables = cables("conduit/" + c.name(), finished);
      List<Double> all = new ArrayList<>(cables);
      c.way().holds().forEach(k -> all.add(Cable.get(k).outside().toMm()));
      double share = TubeFill.share(all, c.insideDiameter().toMm());
      boolean nipple = c.length().value().toMm() <= 609.6;
      double most = TubeFill.limit(all.size(), nipple);
      if (!cables.isEmpty() && c.kind() == Conduit.Kind.TUBE && share > most + 1e-9) {
        out.add(finding(c, all.size(), share, most));
      }
    }
    return out;
  }

  private static List<Double> cables(String tube, Finished finished) {
    return Legs.of(finished.plan()).stream()
        .filter(r -> r.in(HollowKind.CONDUIT).stream().anyMatch(s -> s.id().equals(tube)))
        .flatMap(r -> r.cable().stream())
        .map(Cable::outside)
        .map(d -> d.toMm())
        .toList();
  }

  private Finding finding(Conduit c, int cables, double share, double most) {
    return say(
        Severity.PRACTICE,
        Place.of("conduit/" + c.name()),
        SignalFigures.FILL_MORE.cited(),
        false,
        new Said(
            "%d cables lie in the tube %s%s."
                .formatted(
                    cables,
                    c.name(),
                    c.way().holds().isEmpty() ? "" : ", those that were there and the new ones"),
            String.format(Locale.ROOT, "%.0f %%", share * 100),
            String.format(Locale.ROOT, "%.0f %%", most * 100),
            "Pull them together with lubricant, or send one another way."));
  }
}
