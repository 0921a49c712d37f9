package holloway.hollow;

/** A place a person works from; {@code zone} is its set-up's key (empty when it needs none). */
public record Stand(String id, String words, String zone) {}
