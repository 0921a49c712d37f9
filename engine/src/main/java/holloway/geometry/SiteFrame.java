package holloway.geometry;

/**
 * Where a house's own frame lies in that of its site, whose axes are east and north: what is turned
 * first and then shifted, heights as they are. A house is worked out in its own frame, along which
 * its walls run; what leaves as coordinates is the site's.
 *
 * @param east of the own frame's origin, nanometres; {@code north} likewise
 */
public record SiteFrame(Turn turn, long east, long north) {
  /** Of a house that stands along the axes. */
  public static final SiteFrame OWN = new SiteFrame(Turn.NONE, 0, 0);

  public boolean isOwn() {
    return equals(OWN);
  }

  public Point3 toSite(Point3 own) {
    return turn.of(own.plan()).plus(east, north).at(own.z());
  }

  public Point3 fromSite(Point3 site) {
    return turn.back(site.plan().plus(-east, -north)).at(site.z());
  }
}
