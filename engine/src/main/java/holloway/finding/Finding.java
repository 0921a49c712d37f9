package holloway.finding;

/**
 * One thing a person should know.
 *
 * @param rule the rule's id in plain words with dashes, for example {@code garage-separation}
 * @param source where the figure or duty is from, or "common practice, no published source"
 * @param text what was found and what to do
 */
public record Finding(String rule, Severity severity, Place place, String source, String text) {}
