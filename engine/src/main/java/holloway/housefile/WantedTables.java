package holloway.housefile;

import static holloway.housefile.Shape.ALONG;
import static holloway.housefile.Shape.FACE;
import static holloway.housefile.Shape.HEIGHT;
import static holloway.housefile.Shape.ID;
import static holloway.housefile.Shape.LENGTH;
import static holloway.housefile.Shape.NAME;
import static holloway.housefile.Shape.ROOM;
import static holloway.housefile.Shape.YES_NO;
import static holloway.housefile.Shape.listOf;
import static holloway.housefile.Shape.wordsOf;
import static holloway.housefile.Table.may;
import static holloway.housefile.Table.must;

import holloway.catalog.Cable;
import holloway.catalog.Cables;
import holloway.catalog.PinOut;
import holloway.catalog.ShopItem;
import holloway.house.LayoutCorner;
import holloway.house.RulePlace;
import holloway.request.Profile;
import holloway.request.Wishes;
import holloway.units.Length;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Keys of what is wanted, of the companion files, and of the house file as a whole. */
final class WantedTables {
  private WantedTables() {}

  static final Shape.Words CABLE = new Shape.Words(Cables.all().stream().map(Cable::kind).toList());

  /** Power over the cable: none, or a class of IEEE 802.3. */
  static final Shape.Words POWER =
      new Shape.Words(
          Stream.concat(Stream.of("none"), IntStream.rangeClosed(1, 8).mapToObj(i -> "class " + i))
              .toList());

  static final Table CABINET =
      Table.of("cabinet", "where the network gear stands: its back's centre")
          .plus(OuterTables.WALL_SPOT.keys())
          .plus(
              may(
                  "or",
                  listOf(new Shape.MapOf(OuterTables.WALL_SPOT)),
                  "other places where it could stand, for compare --cabinet"));

  static final Table NAMED_CABLE =
      Table.of(
          "named-cable",
          "a cable whose run has a name of its own",
          must("kind", CABLE, "the cable kind"),
          must("name", NAME, "the run's name"));

  private static final List<Table.Key> PLACE_KEYS =
      List.of(
          may("in", ROOM, "the room"),
          may("wall", OuterTables.WALL_SIDE, "the side of the room"),
          may("from", ALONG, "from the end of that side to the centre"),
          may("to", LENGTH, "anywhere up to this distance from the same end will do"),
          may("height", HEIGHT, "of the centre above the floor; 16 in or 450 mm unless said"),
          may("ceiling", HouseTables.SPOT, "on the ceiling: from two sides of the room"),
          may("outside", FACE, "on the outside of the wall behind that room and side"),
          may("under", NAME, "under the roof of that porch: from an end of it, and out"),
          may("out", LENGTH, "under a porch: from the outside of the wall to the centre"));

  static final Table ALTERNATIVE =
      Table.of("alternative", "another place that will do").plus(PLACE_KEYS);

  static final Table OUTLET =
      Table.of("outlet", "a place where cables end", must("name", NAME, "your name for it"))
          .plus(PLACE_KEYS)
          .plus(
              may("or", listOf(new Shape.MapOf(ALTERNATIVE)), "other places that will do"),
              may(
                  "cables",
                  listOf(new Shape.Either(CABLE, new Shape.MapOf(NAMED_CABLE))),
                  "the cables to the cabinet, one kind each"),
              may("spare", new Shape.Whole(0, 24), "more of the first kind, for later"),
              may("feed", YES_NO, "the provider's box; its cables are outdoor cables"),
              may("power", POWER, "power over the cable"),
              may(
                  "box-depth",
                  new Shape.Len(Length.mm(10), Length.mm(200)),
                  "of the box to be fitted, from the face of the lining to its back"));

  static final Table LINK =
      Table.of(
          "link",
          "a cable between two outlets",
          must("from", new Shape.Text(Form.OUTLET), "an outlet, or cabinet"),
          must("to", new Shape.Text(Form.OUTLET), "an outlet, or cabinet"),
          must("cable", CABLE, "the cable kind"),
          may("name", NAME, "the run's name"));

  static final Table WISHES =
      Table.of(
          "wishes",
          "what you prefer",
          may("hour-is-worth", new Shape.Text(Form.MONEY), "what an hour of work is worth"),
          may(
              "visible-metre",
              new Shape.Text(Form.MINUTES),
              "dislike of a metre of cable in sight"),
          may("attic", wordsOf(Wishes.Season.class), "when the attic is worked in"),
          may("avoid", listOf(ROOM), "rooms to leave alone"),
          may("bans", listOf(ID), "holes, hollows or ways not to be used"),
          may("profile", wordsOf(Profile.class), "what the plan makes least"),
          may("through", new Shape.Named(ID), "a run's id, and the hollow it must pass"));

  private static final Table.Key CREW = may("crew", new Shape.Whole(1, 2), "how many people work");

  static final Table WISHES_FILE =
      new Table("wishes-file", "wishes kept beside a house file", WISHES.keys(), List.of())
          .plus(CREW)
          .plus(
              may(
                  "spots",
                  new Shape.Named(ALONG),
                  "an outlet's name, and where along its wall it stands instead"));

  static final Table FOUND_STUD =
      Table.of(
          "found-stud",
          "a stud's centre",
          must("side", FACE, "the room and side"),
          must("from", ALONG, "from the end of that side"));

  static final Table FOUND_BLOCK =
      Table.of(
          "found-block",
          "a block across one bay",
          must("side", FACE, "the room and side"),
          must("from", ALONG, "from the end of that side"),
          must("height", LENGTH, "of its centre above the floor"));

  static final Table FOUND_CLEAR =
      Table.of(
          "found-clear",
          "a bay probed and found clear",
          must("side", FACE, "the room and side"),
          must("from", ALONG, "from the end of that side"));

  static final Table FOUND_HOLE =
      Table.of(
          "found-hole",
          "a hole of an earlier plan that is made",
          must("id", ID, "the hole's id"),
          must("diameter", LENGTH, "as bored"),
          may("cables", new Shape.Whole(0, 99), "how many lie in it"));

  static final Table FOUND_NOTCH =
      Table.of(
          "found-notch",
          "a notch that somebody cut before, in a joist or a stud",
          may("side", FACE, "in a stud: the room and side it is seen from"),
          may("from", ALONG, "in a stud: from the end of that side"),
          may("height", LENGTH, "in a stud: of its middle above the floor"),
          may("above-ceiling-of", ROOM, "in a joist over that room"),
          may("below-floor-of", ROOM, "in a joist under that room"),
          may("at", HouseTables.SPOT, "in a joist: its middle, from two sides of the room"),
          may("edge", Shape.words("top", "bottom"), "in a joist: the edge it is cut into"),
          must("depth", LENGTH, "how far it is cut into the wood"),
          must("length", LENGTH, "along the wood"));

  static final Table FOUND_FILE =
      Table.of(
          "found-file",
          "what the work uncovered, kept beside a house file",
          may("studs", listOf(new Shape.MapOf(FOUND_STUD)), "studs found"),
          may("blocks", listOf(new Shape.MapOf(FOUND_BLOCK)), "blocks found"),
          may("clear-bays", listOf(new Shape.MapOf(FOUND_CLEAR)), "bays found clear"),
          may("notches", listOf(new Shape.MapOf(FOUND_NOTCH)), "notches in joists or studs"),
          may("holes", listOf(new Shape.MapOf(FOUND_HOLE)), "holes made"));

  static final Table HOUSE =
      Table.of(
          "house",
          "a house as taped, and what is wanted of it",
          must("house", NAME, "its name"),
          must(
              "place",
              wordsOf(RulePlace.class),
              "whose rules are looked up, and how houses are usually built"),
          may("built", new Shape.Whole(1500, 2100), "the year"),
          may("framing", Shape.words("platform", "balloon"), "balloon: studs run past the floors"),
          may(
              "layout-from",
              Shape.wordsOf(LayoutCorner.class),
              "the corner that assumed studs, joists and rafters are counted from"),
          may(
              "turned",
              new Shape.Text(Form.TURN),
              "how far the house stands turned from the compass or the site's grid: its own north"
                  + " is meant wherever north is said"),
          may("outer-walls", new Shape.MapOf(HouseTables.WALL_DEFAULT), "the outer walls"),
          may("inner-walls", new Shape.MapOf(HouseTables.WALL_DEFAULT), "the inner walls"),
          may("usual", new Shape.MapOf(HouseTables.USUAL), "what is usual in this house"),
          must("levels", new Shape.Named(new Shape.MapOf(HouseTables.LEVEL_TABLE)), "the storeys"),
          must("rooms", new Shape.Named(new Shape.MapOf(HouseTables.ROOM_TABLE)), "the rooms"),
          may("walls", listOf(new Shape.MapOf(HouseTables.WALL)), "walls unlike the default"),
          may("openings", listOf(new Shape.MapOf(HouseTables.OPENING)), "doors and windows"),
          may("roof", listOf(new Shape.MapOf(OuterTables.ROOF)), "the roofs"),
          may("stairs", listOf(new Shape.MapOf(OuterTables.STAIR)), "flights and their wells"),
          may("porches", listOf(new Shape.MapOf(PorchReader.TABLE)), "roofs over open porches"),
          may("beams", listOf(new Shape.MapOf(OuterTables.BEAM)), "beams that cross rooms"),
          may(
              "hollows",
              listOf(OuterTables.HOLLOW),
              "known chases, conduits, links to other buildings"),
          may("obstacles", listOf(new Shape.MapOf(OuterTables.OBSTACLE)), "what is in the way"),
          may("things", listOf(new Shape.MapOf(OuterTables.THING)), "what is seen in rooms"),
          may("measures", listOf(new Shape.MapOf(OuterTables.MEASURE)), "more tapes"),
          must("cabinet", new Shape.MapOf(CABINET), "where the network gear stands"),
          must("outlets", listOf(new Shape.MapOf(OUTLET)), "where cables end"),
          may("links", listOf(new Shape.MapOf(LINK)), "cables between outlets"),
          may("wishes", new Shape.MapOf(WISHES), "what you prefer"),
          CREW,
          may("pin-out", wordsOf(PinOut.class), "which scheme the jacks are wired to"),
          may(
              "job",
              new Shape.MapOf(JobReader.TABLE),
              "what the rules ask: speed, cold, cords, listings"),
          may(
              "have",
              listOf(new Shape.Words(ShopItem.keys())),
              "tools and parts that are there already and not bought"),
          may("rules", new Shape.Text(Form.FILE), "your own rule file beside this one"),
          may("prices", new Shape.Text(Form.FILE), "a price file beside this one"),
          may("effort", new Shape.Text(Form.FILE), "your own effort file beside this one"));
}
