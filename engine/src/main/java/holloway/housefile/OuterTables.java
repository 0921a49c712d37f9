package holloway.housefile;

import static holloway.housefile.Shape.ALONG;
import static holloway.housefile.Shape.FACE;
import static holloway.housefile.Shape.HEIGHT;
import static holloway.housefile.Shape.LENGTH;
import static holloway.housefile.Shape.LEVEL;
import static holloway.housefile.Shape.NAME;
import static holloway.housefile.Shape.ROOM;
import static holloway.housefile.Shape.SIZE;
import static holloway.housefile.Shape.SPACING;
import static holloway.housefile.Shape.YES_NO;
import static holloway.housefile.Shape.listOf;
import static holloway.housefile.Shape.words;
import static holloway.housefile.Shape.wordsOf;
import static holloway.housefile.Table.may;
import static holloway.housefile.Table.must;

import holloway.catalog.Cable;
import holloway.catalog.Cables;
import holloway.house.Beam;
import holloway.house.Chase;
import holloway.house.Direction;
import holloway.house.Dormer;
import holloway.house.Obstacle;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.house.Stair;
import holloway.house.Thing;
import holloway.units.Length;
import java.util.List;

/** Keys of roofs, known hollows, obstacles, things seen and extra tapes. */
final class OuterTables {
  private OuterTables() {}

  static final Shape WALL_SIDE = new Shape.Text(Form.SIDE_OF_ROOM);

  static final Table JOIN =
      Table.of(
          "join",
          "an opening from one roof's attic into another's",
          must("to", NAME, "the other roof's name"),
          may("size", SIZE, "clear, along the wall between x height"),
          may("from", ALONG, "from an end of the wall between to its near side"),
          may("shut", YES_NO, "yes: somebody looked, and there is no way through"),
          may(
              "valley",
              wordsOf(Roof.Valley.class),
              "this roof runs onto the other: was the sheathing below it cut out or left in"));

  static final Table KNEE =
      Table.of(
          "knee-wall",
          "a low wall of a room under the slope, along the eaves",
          must("side", FACE, "the room and side it shows to"),
          must("height", LENGTH, "from the floor to where the ceiling begins to slope"),
          may(
              "behind",
              words("bare", "boarded"),
              "bare: its studs stand open to the space behind; boarded (unless said): shut"));

  static final Table SKYLIGHT =
      Table.of(
          "skylight",
          "an opening in a ceiling, with a framed shaft up through the roof",
          must("in", ROOM, "the room it opens into"),
          must("at", HouseTables.SPOT, "its centre, from two sides of the room"),
          must("size", SIZE, "clear at the ceiling, east-west x north-south"));

  static final Table DORMER =
      Table.of(
          "dormer",
          "a dormer over an attic, or one that a room with a knee wall goes out into; taped from"
              + " inside, all sizes clear",
          must("side", wordsOf(Side.class), "the eave that its slope comes down to"),
          must("shape", wordsOf(Dormer.Cover.class), "its own roof"),
          may(
              "in",
              ROOM,
              "the room whose knee wall stops at its cheeks, if it is not over an attic"),
          must(
              "from",
              ALONG,
              "along the eave to its nearer cheek, from an end of the roof; with 'in', of the room"),
          must("width", LENGTH, "between its cheeks"),
          may("back", HEIGHT, "level, from the outside of the eaves wall's studs to its front"),
          may("out", LENGTH, "with 'in': level, from the knee wall's face out to its front"),
          must(
              "height",
              LENGTH,
              "at its front, to its own roof, from the tops of the joists; with 'in', the floor"));

  static final Table ROOF =
      Table.of(
          "roof",
          "a roof over a level or over some of its rooms",
          must("over", new Shape.Either(LEVEL, listOf(ROOM)), "a level, or a list of rooms"),
          may("name", NAME, "your name for it"),
          must("shape", wordsOf(Roof.Shape.class), "its outline"),
          may("ridge", wordsOf(Direction.class), "the way the ridge runs"),
          may(
              "run",
              wordsOf(Direction.class),
              "the way a flat roof's joists run, if no attic is in it"),
          may("low-side", wordsOf(Side.class), "a shed roof's lower side"),
          may("pitch", new Shape.Text(Form.PITCH), "rise over run, or degrees"),
          may(
              "rise",
              LENGTH,
              "of an arched roof: in its middle, from the tops of the joists to its ribs"),
          may("eaves", HEIGHT, "overhang"),
          must("frame", wordsOf(Roof.Frame.class), "what carries it"),
          may("chord", HouseTables.TIMBER, "bottom chord or ceiling joist"),
          may("every", SPACING, "centre to centre"),
          may("heel", LENGTH, "top of plate to top of rafter over the outer face"),
          may("insulation", new Shape.Text(Form.INSULATION), "depth and kind"),
          may("boarded", YES_NO, "boards to walk on"),
          may("hatch", new Shape.MapOf(HouseTables.HATCH), "the way in"),
          may("hatches", listOf(new Shape.MapOf(HouseTables.HATCH)), "the ways in"),
          may("skylights", listOf(new Shape.MapOf(SKYLIGHT)), "shafts up through it"),
          may("dormers", listOf(new Shape.MapOf(DORMER)), "dormers in its slopes"),
          may("joins", listOf(new Shape.MapOf(JOIN)), "openings into other roofs' attics"),
          may(
              "knee-walls",
              listOf(new Shape.MapOf(KNEE)),
              "low walls along its eaves, with a side attic behind"));

  static final Table CHASE =
      Table.of(
          "chase",
          "an upright shaft",
          must("chase", NAME, "its name"),
          must("beside", FACE, "the face it stands behind or in front of"),
          may("along", ALONG, "from the end of that face to the near side of the shaft"),
          may("inside", YES_NO, "yes: boxed into that room; no: behind its face"),
          must("from", LEVEL, "the lowest level it stands on"),
          must("to", new Shape.Text(Form.LEVEL_OR_ATTIC), "the level it ends in, or attic"),
          must("size", SIZE, "clear inside: along the face x away from it"),
          may("contents", listOf(wordsOf(Chase.Contents.class)), "what it holds"),
          may(
              "floors",
              new Shape.Named(wordsOf(Chase.FloorPass.class)),
              "what each level's floor (or attic) does to it"),
          may("known", YES_NO, "seen, not guessed"));

  static final Table STAIR =
      Table.of(
          "stair",
          "a straight flight, and the opening in the floor above that it rises through",
          must("stair", NAME, "its name"),
          must("in", ROOM, "the room it starts in"),
          must("from", HouseTables.SPOT, "its near edges, from two sides of that room"),
          must("size", SIZE, "in plan, east-west x north-south"),
          must("climbs", wordsOf(Side.class), "the side its upper end lies on"),
          may(
              "under",
              wordsOf(Stair.Under.class),
              "the space under it: closed (unless said), open to the room, or a cupboard"));

  static final Table BEAM =
      Table.of(
          "beam",
          "a beam across a room from side to side; nobody bores it",
          must("beam", NAME, "its name"),
          must("in", ROOM, "the room it crosses"),
          must("run", wordsOf(Direction.class), "the way it runs"),
          must("from", ALONG, "from a side of the room to its middle"),
          must("width", new Shape.Len(Length.mm(30), Length.mm(1_000)), "as it is seen"),
          may("drop", HEIGHT, "how far it hangs below the ceiling; nothing if within the joists"),
          may(
              "depth",
              new Shape.Len(Length.mm(50), Length.mm(1_500)),
              "from its underside to its top; as far as it hangs unless said"),
          may("made", wordsOf(Beam.Made.class), "what it is of; timber unless said"));

  static final Table WALL_SPOT =
      Table.of(
          "wall-spot",
          "a spot on a room's wall",
          must("in", ROOM, "the room"),
          must("wall", WALL_SIDE, "the side of the room"),
          must("from", ALONG, "from the end of that side to the centre"),
          must("height", HEIGHT, "of the centre above the floor"));

  /** Whole quarter turns, or the angle of each bend. */
  private static final Shape BENDS =
      new Shape.Either(new Shape.Whole(0, 20), new Shape.ListOf(new Shape.Whole(1, 180), 1, 20));

  static final Table TUBE_PART =
      Table.of(
          "tube part",
          "a tube from one place where a hand gets at the cable to the next",
          must("length", LENGTH, "along the tube"),
          may("bends", BENDS, "quarter turns, or the angle of each bend in degrees: [90, 45]"));

  private static Shape wordsOfKinds() {
    return new Shape.Words(Cables.all().stream().map(Cable::kind).toList());
  }

  static final Table CONDUIT =
      Table.of(
          "conduit",
          "an existing tube between two boxes",
          must("conduit", NAME, "its name"),
          must("from", new Shape.MapOf(WALL_SPOT), "one end"),
          must("to", new Shape.MapOf(WALL_SPOT), "the other end"),
          must("inside-diameter", LENGTH, "clear inside"),
          may("bends", BENDS, "quarter turns, or the angle of each bend in degrees: [90, 45]"),
          may("length", LENGTH, "along the tube"),
          may(
              "parts",
              new Shape.ListOf(new Shape.MapOf(TUBE_PART), 2, 20),
              "instead of length and bends: from pull box to pull box, beginning at from"),
          may("holds", listOf(wordsOfKinds()), "the cables that lie in it already"));

  static final Table OUTDOOR_LINK =
      Table.of(
          "outdoor-link",
          "a way for cable from one building to another",
          must("outdoor-link", NAME, "its name"),
          must(
              "kind",
              words("duct", "buried", "overhead"),
              "a tube or bare cable in the earth, or a span in the air"),
          must(
              "from",
              new Shape.MapOf(WALL_SPOT),
              "one end, where it leaves an outer wall; the room is the one behind"),
          must("to", new Shape.MapOf(WALL_SPOT), "the other end"),
          may("length", LENGTH, "from wall to wall along it"),
          may("there", YES_NO, "yes: the duct lies there already; no (unless said): it is dug"),
          may("depth", HEIGHT, "of earth over it"),
          may("inside-diameter", LENGTH, "of a duct, clear inside"),
          may("bends", BENDS, "of a duct: quarter turns, or the angle of each in degrees"),
          may(
              "parts",
              new Shape.ListOf(new Shape.MapOf(TUBE_PART), 2, 20),
              "of a duct, instead of length and bends: from pull box to pull box, beginning at"
                  + " from"),
          may("holds", listOf(wordsOfKinds()), "the cables that lie in a duct already"));

  static final Table OBSTACLE =
      Table.of(
              "obstacle",
              "something solid or dangerous in a wall or void, or what hums under a ceiling",
              may("side", FACE, "in a wall: the room and side it is seen from"),
              may("from", ALONG, "in a wall: from the end of that side to its near end"),
              may("width", LENGTH, "in a wall: along it"),
              may("bottom", HEIGHT, "in a wall: above the floor"),
              may("top", LENGTH, "in a wall: above the floor"),
              may("above-ceiling-of", ROOM, "in the void over that room"),
              may("below-ceiling-of", ROOM, "hung in that room, as a light or a fan is"),
              may("below-floor-of", ROOM, "in the void under that room"),
              may(
                  "at",
                  HouseTables.SPOT,
                  "in a void or hung: its centre, from two sides of the room"),
              may("size", SIZE, "in a void or hung: east-west x north-south"),
              may("height", LENGTH, "in a void or hung: how tall it is; of a pier nothing"))
          .withKinds(Obstacle.Kind.class);

  static final Table THING =
      Table.of(
              "thing",
              "something seen in a room",
              must("in", ROOM, "the room"),
              must("wall", WALL_SIDE, "the side of the room"),
              must("from", ALONG, "from the end of that side to its centre"),
              may("height", HEIGHT, "of its centre above the floor"),
              may("width", LENGTH, "along the wall"),
              may("top", LENGTH, "of it above the floor"))
          .withKinds(Thing.Kind.class);

  static final Table MEASURE =
      Table.of(
          "measure",
          "one more taped distance between two faces that look along the same axis",
          must("from", FACE, "a room and side"),
          must("to", FACE, "a room and side, east or north of the first"),
          must("distance", LENGTH, "from the one to the other"));

  static final Shape HOLLOW =
      new Shape.OneMapOf(
          List.of(
              CHASE,
              CONDUIT,
              OUTDOOR_LINK,
              CheapWayTables.OLD_CABLE,
              CheapWayTables.SOFFIT,
              CheapWayTables.DROPPED_CEILING,
              CheapWayTables.SKIRTING));
}
