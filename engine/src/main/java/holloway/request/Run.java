package holloway.request;

import java.util.Optional;

/**
 * One wanted cable between two ends; an end is {@code cabinet} or an outlet's name. {@code through}
 * pins it to a hollow id or way, if asked.
 */
public record Run(
    String id, String from, String to, String cable, boolean spare, Optional<String> through) {}
