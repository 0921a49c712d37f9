package holloway.housefile;

import holloway.units.LengthParser;

/** The forms a text can have: a pattern for the schema and words for a message. */
enum Form {
  NAME("[^/\\\\]+", "a name, without / or \\"),
  ID(".+", "a text"),
  ROOM("[^/\\\\]+", "the name of a room"),
  LEVEL("[^/\\\\]+", "the name of a level"),
  LEVEL_OR_ATTIC("[^/\\\\]+", "the name of a level, or attic"),
  OUTLET("[^/\\\\]+", "cabinet, or the name of an outlet"),
  FACE(".+ " + Form.SIDE + "( [1-9])?", "a room and a side: office north"),
  SIDE_OF_ROOM(Form.SIDE + "( [1-9])?", "a side: north, east, south or west"),
  ALONG(Form.SIDE + " " + Form.LEN, "a side and a distance from it: west 3 ft 2 in"),
  ROW(
      "(" + Form.SIDE + " )?" + Form.LEN,
      "a distance, after the side it is taped from unless that is the west or south: north 7 ft"),
  SIZE(Form.LEN + " x " + Form.LEN, "east-west x north-south: 12 ft 6 in x 10 ft"),
  TIMBER(
      "2x(4|6|8|10|12)|\\d{2,3} ?x ?\\d{2,3}( mm)?",
      "a timber: 2x4 to 2x12, or 47x195 in millimetres"),
  STUDS(
      Form.TIMBER_PATTERN + "|steel (\\d-)?\\d/\\d in|steel \\d{2,3} mm",
      "studs: 2x4, 38x89 in millimetres, or steel and their depth: steel 3-5/8 in, steel 92 mm"),
  LAYER(
      "(board|plaster|lath-and-plaster|tile|panel) " + Form.LEN,
      "what and how thick, from the studs outward: board 1/2 in, panel 18 mm"),
  ALIGN(
      "north|east|south|west|(north|south)-(east|west)",
      "the sides whose faces are in line: north, or south-east for rooms one above the other"),
  PITCH("\\d+/\\d+|\\d+(\\.\\d+)? deg", "a pitch: 6/12 or 35 deg"),
  TURN(
      "\\d{1,3}(\\.\\d{1,9})? ?deg (clockwise|counter-clockwise)",
      "an angle and a way, seen from above: 23.5 deg clockwise"),
  INSULATION(
      "none|" + Form.LEN + "( (loose|faced-batt|unfaced-batt|dense-packed|foam|unknown))?",
      "a depth and a kind: 12 in loose, 200 mm unfaced-batt, or none"),
  SHARE("\\d{1,3}(\\.\\d{1,2})? ?%|[1-9]/[1-9]\\d?", "a share: 25 %, or 1/3"),
  TEMPERATURE("-?\\d{1,3} ?[CF]", "a temperature: -5 C, or 23 F"),
  MONEY("\\d+(\\.\\d{1,2})? [A-Z]{3}", "an amount and a currency: 40 USD"),
  MINUTES("\\d+(\\.\\d+)? (min|h)", "a time: 30 min"),
  FILE("[^/\\\\]+", "the name of a file beside the house file");

  private static final String TIMBER_PATTERN = "2x(4|6|8|10|12)|\\d{2,3} ?x ?\\d{2,3}( mm)?";
  private static final String SIDE = "(north|east|south|west)";
  private static final String LEN =
      "(" + LengthParser.PATTERN + ")( ?\\+- ?(" + LengthParser.PATTERN + "))?";

  private final String pattern;
  private final String expected;

  Form(String pattern, String expected) {
    this.pattern = pattern;
    this.expected = expected;
  }

  /** A name that the person gives or gave. */
  boolean isName() {
    return switch (this) {
      case NAME, ID, ROOM, LEVEL, LEVEL_OR_ATTIC, OUTLET, FILE -> true;
      default -> false;
    };
  }

  /** Anchored at both ends. */
  String pattern() {
    return "^(" + pattern + ")$";
  }

  static String lengthPattern() {
    return "^(" + LEN + ")$";
  }

  String expected() {
    return expected;
  }
}
