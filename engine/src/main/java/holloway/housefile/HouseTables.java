package holloway.housefile;

import static holloway.housefile.Shape.ALONG;
import static holloway.housefile.Shape.FACE;
import static holloway.housefile.Shape.HEIGHT;
import static holloway.housefile.Shape.LENGTH;
import static holloway.housefile.Shape.LEVEL;
import static holloway.housefile.Shape.NAME;
import static holloway.housefile.Shape.ROOM;
import static holloway.housefile.Shape.SIGNED;
import static holloway.housefile.Shape.SIZE;
import static holloway.housefile.Shape.SPACING;
import static holloway.housefile.Shape.YES_NO;
import static holloway.housefile.Shape.listOf;
import static holloway.housefile.Shape.pairOf;
import static holloway.housefile.Shape.words;
import static holloway.housefile.Shape.wordsOf;
import static holloway.housefile.Table.may;
import static holloway.housefile.Table.must;

import holloway.house.Direction;
import holloway.house.Fill;
import holloway.house.Lining;
import holloway.house.Opening;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.units.Length;
import java.util.List;

/** Keys of the building itself: levels, rooms, walls and openings. */
final class HouseTables {
  private HouseTables() {}

  static final Shape CEILING = new Shape.Len(Length.mm(1_000), Length.mm(12_000));
  static final Shape TIMBER = new Shape.Text(Form.TIMBER);

  static final Table CORNER_SPOT =
      Table.of(
          "corner-spot",
          "distances from two sides of the room, one of west/east and one of south/north",
          may("west", HEIGHT, "from the west side"),
          may("east", HEIGHT, "from the east side"),
          may("south", HEIGHT, "from the south side"),
          may("north", HEIGHT, "from the north side"));

  /** A spot on a ceiling or floor: two distances as a list or as a map. */
  static final Shape SPOT = new Shape.Either(pairOf(ALONG), new Shape.MapOf(CORNER_SPOT));

  static final Table HATCH =
      Table.of(
          "hatch",
          "a way through a ceiling or floor",
          must("in", ROOM, "the room it opens into"),
          must("at", SPOT, "its centre, from two sides of the room"),
          may("size", SIZE, "clear size, east-west x north-south; 22 in x 30 in unless said"));

  static final Table OUTSIDE_DOOR =
      Table.of(
          "outside-door",
          "a door or panel in an outside wall",
          must("side", FACE, "the room and side it is below"),
          must("from", ALONG, "to its centre"),
          may("width", LENGTH, "24 in unless said"),
          may("height", LENGTH, "16 in unless said"));

  static final Table ACCESS =
      Table.of(
          "access",
          "the way in: one of the two",
          may("floor-hatch", new Shape.MapOf(HATCH), "a hatch in a room's floor"),
          may("outside-door", new Shape.MapOf(OUTSIDE_DOOR), "a door in an outside wall"));

  static final Table CRAWLSPACE =
      Table.of(
          "crawlspace",
          "the space under the lowest joists",
          may("clearance", LENGTH, "from the ground to the underside of the joists"),
          may("access", new Shape.MapOf(ACCESS), "the way in"));

  static final Table UNDER =
      Table.of(
          "under",
          "what lies under the joists",
          must("crawlspace", new Shape.MapOf(CRAWLSPACE), "its clear height and the way in"));

  static final Table FLOOR =
      Table.of(
          "floor",
          "a floor of joists",
          may("joists", TIMBER, "their section"),
          may("every", SPACING, "centre to centre"),
          must("run", wordsOf(Direction.class), "the way the joists run"),
          may("kind", wordsOf(Timber.Kind.class), "how a joist is made"),
          may("from", ALONG, "the first joist's centre, from the floor's outer edge"),
          may(
              "over",
              new Shape.Either(words("crawlspace"), new Shape.MapOf(UNDER)),
              "what lies under the lowest floor"),
          may("boards", YES_NO, "floorboards that lift, not sheets"),
          may(
              "blocks-at",
              listOf(new Shape.Text(Form.ROW)),
              "rows of solid blocks between the joists, from the floor's west or south outer edge, or"
                  + " from the side that is said"),
          may(
              "blocks-over-walls",
              YES_NO,
              "whether the joists are blocked over bearing and outer walls below; taken to be"),
          may("fill", wordsOf(Fill.class), "what lies between the joists"));

  /** What a ceiling hangs on below the joists. */
  static final Table STRAPS_TABLE =
      Table.of(
          "straps",
          "battens, straps, furring or channels across the joists, with the ceiling below them",
          must(
              "depth",
              new Shape.Len(Length.mm(5), Length.mm(50)),
              "from the joists down to the back of the ceiling's lining"),
          may(
              "every",
              new Shape.Len(Length.mm(200), Length.mm(1_200)),
              "from middle to middle; 16 in (406 mm) unless said"));

  static final Shape STRAPS = new Shape.MapOf(STRAPS_TABLE);

  static final Shape FLOOR_SHAPE = new Shape.Either(words("slab"), new Shape.MapOf(FLOOR));

  private static final List<Table.Key> USUAL_KEYS =
      List.of(
          may("finish", wordsOf(Lining.class), "what walls show"),
          may("ceiling", wordsOf(Lining.class), "what ceilings show"),
          may("head", LENGTH, "head of doors and windows, above the floor"),
          may("sill", HEIGHT, "sill of windows, above the floor"),
          may("outlet-height", HEIGHT, "centre of boxes, above the floor"));

  /** What is usual on one level. */
  static final Table USUAL_HERE =
      Table.of("usual-here", "what is usual on this level").plus(USUAL_KEYS);

  /** What is usual in the house. */
  static final Table USUAL =
      Table.of(
              "usual",
              "what is usual in this house, instead of what place and year would say",
              may("ceiling-height", CEILING, "floor to ceiling"),
              may("joists", TIMBER, "their section"),
              may("joist-spacing", SPACING, "centre to centre"),
              may("eaves", HEIGHT, "overhang of roofs"))
          .plus(USUAL_KEYS);

  /** The word for a ceiling on the slope. */
  static final String VAULTED = "vaulted";

  private static final Shape CEILINGS =
      new Shape.Either(
          wordsOf(Lining.class, VAULTED), new Shape.ListOf(new Shape.Text(Form.LAYER), 1, 5));

  static final Table ROOM_TABLE =
      Table.of(
          "room",
          "a room by what a tape measures",
          must("level", LEVEL, "the level it is on"),
          may("size", SIZE, "clear inside size, east-west x north-south"),
          may(
              "outline",
              new Shape.ListOf(pairOf(SIGNED), 3, 200),
              "corners [east, north] in order"),
          may("east-of", ROOM, "this room lies east of that one"),
          may("west-of", ROOM, "this room lies west of that one"),
          may("north-of", ROOM, "this room lies north of that one"),
          may("south-of", ROOM, "this room lies south of that one"),
          may("above", ROOM, "this room lies over that one"),
          may("below", ROOM, "this room lies under that one"),
          may("at", pairOf(SIGNED), "[east, north] from the first room's south-west corner"),
          may(
              "apart",
              YES_NO,
              "yes: the first room of a building that stands apart, nobody knows where"),
          may("align", new Shape.Text(Form.ALIGN), "the sides whose faces are in line"),
          may("shift", SIGNED, "how far from in line, towards north or east"),
          may("shift-east", SIGNED, "for rooms one above the other"),
          may("shift-north", SIGNED, "for rooms one above the other"),
          may("tied", words("measured", "assumed"), "whether the tie between storeys was taped"),
          may("floor", FLOOR_SHAPE, "its own floor, if not the level's"),
          may("elevation", SIGNED, "its floor against the level's floor"),
          may("ceiling-height", CEILING, "its own ceiling height"),
          may("finish", wordsOf(Lining.class), "what its walls show"),
          may(
              "ceiling",
              CEILINGS,
              "what its ceiling shows, or its layers from the joists down; vaulted: it follows the"
                  + " rafters"),
          may("straps", STRAPS, "what its ceiling hangs on below the joists, across them"),
          may("plain", YES_NO, "cables may show here"),
          may("garage", YES_NO, "a garage"),
          may("ours", YES_NO, "no: somebody else's; nothing is led through, over or under it"),
          may("surveyed", YES_NO, "no: nothing is assumed inside it, nobody works from it"));

  /** A service layer before a framed wall. */
  static final Table BATTENS_TABLE =
      Table.of(
          "battens",
          "battens before a framed wall's own lining, with a lining of their own before them",
          must(
              "depth",
              new Shape.Len(Length.mm(10), Length.mm(150)),
              "from the lining behind them to the back of the one before them"),
          must(
              "run",
              words("level", "upright"),
              "level: cable passes along the wall; upright: up and down it"),
          may(
              "every",
              new Shape.Len(Length.mm(200), Length.mm(1_200)),
              "from middle to middle; 24 in (610 mm) for level ones unless said, else the studs'"),
          may(
              "first",
              new Shape.Len(Length.ZERO, Length.mm(3_000)),
              "height of the middle of one level batten over the floor"),
          may(
              "over",
              new Shape.Text(Form.LAYER),
              "the lining on the studs, behind them; board 1/2 in unless said"));

  private static final List<Table.Key> WALL_KEYS =
      List.of(
          may("kind", Shape.wordsOf(WallSpec.Kind.class, CavityReader.WORD), "how it is built"),
          may(
              "inside",
              words("masonry", "dabbed", "furred"),
              "of a cavity wall: plaster on its inner leaf (masonry, unless said), or board on it"),
          may(
              "leaves",
              new Shape.ListOf(LENGTH, 3, 3),
              "of a cavity wall: outer leaf, gap, inner leaf"),
          may("studs", new Shape.Text(Form.STUDS), "their section, or steel and their depth"),
          may(
              "knockouts",
              listOf(LENGTH),
              "heights of the openings punched in steel studs, from their foot"),
          may("every", SPACING, "stud centre to stud centre"),
          may("thickness", new Shape.Len(Length.mm(30), Length.mm(2_000)), "finish to finish"),
          may("bearing", YES_NO, "whether it carries the floor above"),
          may("fill", wordsOf(Fill.class), "what lies between its studs"),
          may("framing", words("platform", "balloon"), "balloon: studs run past the floor"),
          may("top-plate", words("single", "double"), "timbers in the top plate"),
          may("blocks-at", listOf(LENGTH), "heights of blocks across every bay"),
          may(
              "void",
              new Shape.Len(Length.mm(5), Length.mm(150)),
              "depth behind the board of a furred or dabbed wall"),
          may("rows", new Shape.Whole(1, 2), "2: a double wall, a row of studs behind each face"),
          may(
              "lining",
              new Shape.ListOf(new Shape.Text(Form.LAYER), 1, 5),
              "layers from the studs outward, on the side stated, else on both"),
          may(
              "battens",
              new Shape.MapOf(BATTENS_TABLE),
              "a service layer before it, on the side stated, else on both"),
          may(
              "party",
              YES_NO,
              "shared with a neighbour: not bored, cut into, fixed in or crossed"));

  static final Table WALL_DEFAULT =
      Table.of("wall-default", "what most such walls are like").plus(WALL_KEYS);

  static final Table LEVEL_TABLE =
      Table.of(
          "level",
          "a storey",
          must("floor", FLOOR_SHAPE, "slab, or a map of joists"),
          may("ceiling-height", CEILING, "floor to ceiling"),
          may("above", LEVEL, "the level below this one"),
          may("rise", LENGTH, "floor to floor, taped in a stairwell"),
          may("beside", LEVEL, "a split level: the level it stands beside, not over"),
          may("step", SIGNED, "how much higher its floor lies than that of the level beside it"),
          may("outer-walls", new Shape.MapOf(WALL_DEFAULT), "most outer walls of this level"),
          may("inner-walls", new Shape.MapOf(WALL_DEFAULT), "most inner walls of this level"),
          may("usual", new Shape.MapOf(USUAL_HERE), "what is usual on this level"));

  private static final Table.Key BETWEEN =
      may("between", pairOf(ROOM), "the two rooms on its sides");
  private static final Table.Key NUMBER =
      may("number", new Shape.Whole(1, 9), "which wall, if two lie between the same rooms");

  static final Table WALL =
      Table.of(
              "wall",
              "a wall that differs from the default",
              BETWEEN,
              NUMBER,
              may("side", FACE, "the room and side it shows to"),
              may("name", NAME, "your name for it"),
              may("studs-from", ALONG, "a stud's centre, from the end of the face"),
              may(
                  "height",
                  new Shape.Len(Length.mm(300), Length.mm(6_000)),
                  "from the floor to its top, cap included: of a half-height wall, or of one that"
                      + " stops short of the ceiling above over lowered ceilings"),
              may(
                  "header",
                  new Shape.Len(Length.mm(50), Length.mm(1_500)),
                  "of an open side: how far the beam over it hangs below the ceiling"),
              may("separation", words("garage", "none"), "whether it parts garage and house"))
          .plus(WALL_KEYS);

  static final Table OPENING =
      Table.of(
              "opening",
              "a door, window or plain opening",
              BETWEEN,
              NUMBER,
              may("side", FACE, "the room and side it is in"),
              must(
                  "from",
                  ALONG,
                  "from the end of the face (of the room named first) to its near side"),
              must("width", LENGTH, "clear width"),
              may(
                  "shape",
                  words("round", "square"),
                  "round: as wide as high; the framing is square round it"),
              may("sill", HEIGHT, "above the floor"),
              may("head", LENGTH, "above the floor"))
          .withKinds(Opening.Kind.class);
}
