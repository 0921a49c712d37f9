package holloway.check.rules;

import holloway.catalog.Cable;
import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import java.util.List;
import java.util.Locale;

/** What lies in wet earth or hangs in the sun between two buildings is listed for that. */
final class LinkCable implements PlanRule {
  @Override
  public String id() {
    return "cable-between-buildings";
  }

  @Override
  public String about() {
    return "A cable that goes from one building to another is listed for where it lies: wet in a duct,"
        + " direct burial in bare earth, sunlight and its own weight overhead.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", IndoorCableOutside.SOURCE, "listed for where it lies");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return LinkUse.of(finished).stream().map(this::finding).toList();
  }

  private Finding finding(LinkUse use) {
    boolean outdoor = Cable.find(use.run().cable()).map(Cable::outdoor).orElse(false);
    String what =
        String.format(
            Locale.ROOT,
            "%s goes %.1f m through the link %s as %s%s.",
            use.run().id(),
            use.step().m(),
            use.link().name(),
            use.run().cable(),
            outdoor ? "" : ", an indoor cable: ask for outdoor-cat6 or outdoor-fibre");
    return say(
        Severity.PRACTICE,
        Place.of(use.run().id(), use.step().path().get(0)),
        IndoorCableOutside.SOURCE,
        false,
        new Said(
            what,
            use.run().cable(),
            "listed for " + listing(use),
            "Buy cable that is listed for "
                + listing(use)
                + ". What is not also listed for indoor use may lie indoors for at most 15 m (50 ft)"
                + " from where it enters. The local code decides."));
  }

  private static String listing(LinkUse use) {
    return switch (use.link().kind()) {
      case SPAN -> "sunlight and hung from a wire of its own (a messenger), or self-supporting";
      case BURIED -> "direct burial, filled against water";
      default -> "wet places: a duct in the earth fills with water";
    };
  }
}
