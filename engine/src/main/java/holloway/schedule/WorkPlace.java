package holloway.schedule;

/**
 * Where a person stands while a step is done.
 *
 * @param id id of the stand ({@code room/garage}, {@code attic/main roof}, {@code outside}, {@code
 *     ladder})
 * @param name the room's name or the stand's words, for a person
 */
public record WorkPlace(String id, Kind kind, String name) implements Comparable<WorkPlace> {
  /** What getting there takes. Everything but a room and the ground outside is a zone. */
  public enum Kind {
    ROOM,
    OUTSIDE,
    CELLAR,
    CRAWLSPACE,
    ATTIC,
    LADDER;

    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** True where somebody has to get set up to be there. */
  public boolean isZone() {
    return kind != Kind.ROOM && kind != Kind.OUTSIDE;
  }

  @Override
  public int compareTo(WorkPlace o) {
    return id.compareTo(o.id);
  }
}
