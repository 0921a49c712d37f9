package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.limits.Figure;
import holloway.limits.LocalRules;
import holloway.limits.RuleKey;
import java.util.ArrayList;
import java.util.List;

/** A figure of the person's own rule file that allows more than the pack it is based on. */
final class OwnRules implements PlanRule {
  @Override
  public String id() {
    return "own-rules";
  }

  @Override
  public String about() {
    return "A rule file of one's own that allows more than the rules it is based on: the plan was made"
        + " with it, so somebody who may say so has to confirm it.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", Source.PRACTICE, "the figure of the rule pack");
  }

  @Override
  public List<Finding> find(Finished finished) {
    LocalRules own = finished.placed().house().ownRules();
    List<Finding> out = new ArrayList<>();
    own.list()
        .forEach(
            e ->
                e.getKey().usual(own.basedOn()).stream()
                    .filter(usual -> own.looser(e.getKey(), usual))
                    .findFirst()
                    .ifPresent(usual -> out.add(finding(e.getKey(), e.getValue(), usual))));
    return out;
  }

  private Finding finding(RuleKey key, LocalRules.Stated stated, Figure usual) {
    Figure own = stated.figure();
    return say(
        Severity.PRACTICE,
        Place.of("rules/" + key.word()),
        own.from(),
        false,
        new Said(
            "The rule file allows more than the rules it is based on for %s: %s instead of %s."
                .formatted(key.word(), own.said(), usual.said()),
            own.said(),
            usual.said() + " (" + usual.cited() + ")",
            "Have the local authority or a licensed person confirm it before anything is bored."));
  }
}
