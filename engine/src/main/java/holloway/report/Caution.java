package holloway.report;

/** One danger of this house with the source of what is said. */
public record Caution(String name, String text, String source) {}
