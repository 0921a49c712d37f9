package holloway.survey;

import holloway.geometry.Polygon2;

/** Space within a level's footprint that no room, wall or stated chase accounts for. */
public record Unaccounted(String level, Polygon2 outline, double areaM2, String likely) {}
