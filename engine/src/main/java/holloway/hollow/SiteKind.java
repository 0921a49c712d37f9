package holloway.hollow;

/** What a crossing goes through; the words of the JSON. */
public enum SiteKind {
  TOP_PLATE("top plate"),
  BOTTOM_PLATE("bottom plate"),
  PLATE_STACK("plates and floor in line"),
  STUD("stud"),
  BLOCK("fire block"),
  JOIST("joist"),
  BLOCKING("blocking between joists"),
  RIM("rim joist"),
  FLOOR("floor"),
  CEILING("ceiling board"),
  CEILING_AND_FLOOR("ceiling, joist bay and floor in line"),
  WALL_BOARD("wall board"),
  WALL_THROUGH("wall, both boards"),
  OUTER_SKIN("cladding and sheathing"),
  OUTER_THROUGH("outer wall"),
  MASONRY("masonry"),
  CHASE_FLOOR("floor of a chase"),
  CUT_OUT("outlet cut-out"),
  OPENING("existing opening");

  private final String word;

  SiteKind(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
