package holloway.pipeline;

/**
 * What a first house file should hold.
 *
 * @param schema the schema file that an editor is told of
 * @param place us, uk, eu or none
 * @param built year, 0 when not known
 * @param metric lengths in metres instead of feet and inches
 */
public record StartWishes(
    String schema, String name, String place, int built, int levels, boolean metric) {}
