package holloway.pipeline;

/**
 * What a first house file is written from.
 *
 * @param schema what its editor line names
 * @param place us, uk or none
 * @param built year, 0 when not known
 * @param levels storeys, from 1
 */
public record StartWords(
    String schema, String name, String place, int built, int levels, boolean metric) {}
