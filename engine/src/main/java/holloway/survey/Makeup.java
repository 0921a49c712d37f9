package holloway.survey;

import holloway.house.FloorSpec;
import holloway.house.Lining;
import holloway.house.Room;
import holloway.house.Timber;
import holloway.limits.UsualBuild;
import holloway.units.Length;

/**
 * What walls and floors are made of when nobody said: thicknesses in nanometres, and the spreads
 * (one standard deviation) that the survey works with.
 */
public final class Makeup {
  private Makeup() {}

  private static final long MM = Length.NM_PER_MM;

  /** Gypsum board, 1/2 in (trade-facts D14, D17). */
  public static final long BOARD = UsualBuild.fixed("board-thickness");

  /** Fire-resisting board under rooms above a garage, 5/8 in (IRC R302.6, trade-facts C3). */
  public static final long GARAGE_CEILING_BOARD = UsualBuild.fixed("garage-ceiling-board");

  /** Plaster on wood lath: 7/8 in; common practice, no published source. */
  public static final long LATH_AND_PLASTER = UsualBuild.fixed("lath-and-plaster-thickness");

  /** Plaster on masonry; common practice, no published source. */
  public static final long PLASTER = UsualBuild.fixed("plaster-thickness");

  /** Tile and its bed on board; common practice, no published source. */
  public static final long TILE = BOARD + 10 * MM;

  /** Wood panel; common practice, no published source. */
  public static final long PANEL = UsualBuild.fixed("panel-thickness");

  /** Battens between masonry and board of a furred wall; common practice, no published source. */
  public static final long BATTEN = UsualBuild.fixed("batten-void");

  /** Void behind board on dabs: 10 to 25 mm (behind-the-board J23); common practice. */
  public static final long DAB = UsualBuild.fixed("dab-void");

  /** Subfloor panel, 23/32 in (IRC table R503.2.1.1, trade-facts D16). */
  public static final long SUBFLOOR = UsualBuild.fixed("subfloor-thickness");

  /** Between the two rows of a double stud wall when nobody said; common practice. */
  public static final long BETWEEN_ROWS = 25 * MM;

  /** Board that caps a half-height wall; common practice, no published source. */
  public static final long CAP = 19 * MM;

  /** Floorboards on joists; common practice, no published source. */
  public static final long FLOORBOARDS = UsualBuild.fixed("floorboards-thickness");

  /** Wall sheathing, 7/16 in; common practice, no published source. */
  public static final long SHEATHING = UsualBuild.fixed("sheathing-thickness");

  /** Cladding on the sheathing; common practice, no published source. */
  public static final long CLADDING = UsualBuild.fixed("cladding-thickness");

  /** One plate or stud the thin way, 1-1/2 in (PS 20, trade-facts D1). */
  public static final long PLATE = UsualBuild.fixed("plate-thickness");

  /** 2x4 and 2x6 studs (PS 20, trade-facts D1, D2). */
  public static final Timber STUD_2X4 = dressed("2x4", 7, 2);

  public static final Timber STUD_2X6 = dressed("2x6", 11, 2);

  /** Joist taken where a joisted floor states none (trade-facts D4). */
  public static final Timber JOIST = dressed("2x10", 37, 4);

  /** A framed 2x4 wall with board on both faces, 4-1/2 in (trade-facts D14). */
  public static final long WALL_2X4 = Length.inches(9, 2).nm();

  /** A framed 2x6 wall with board on both faces, 6-1/2 in (trade-facts D14). */
  public static final long WALL_2X6 = Length.inches(13, 2).nm();

  /** Masonry partition without plaster; outer masonry over all; a concrete deck. From memory. */
  public static final long MASONRY_INNER = UsualBuild.fixed("bare-masonry-inner");

  public static final long MASONRY_OUTER = UsualBuild.fixed("bare-masonry-outer");
  public static final long CONCRETE_DECK = UsualBuild.fixed("concrete-deck");

  /**
   * Spread of a framed wall of known make-up: within 4 mm taken as three spreads; from experience.
   */
  public static final long WALL_SPREAD = 4 * MM / 3;

  /** Faces said to be in line: within 1 mm taken as three spreads; from experience. */
  public static final long ALIGN_SPREAD = MM / 3;

  /** A storey tie that nobody taped; from experience. */
  public static final long TIE_SPREAD = 25 * MM;

  /** Masonry thickness that nobody stated; from experience. */
  public static final long MASONRY_SPREAD = 25 * MM;

  /** Joists, subfloor and ceiling board of stated sections together; from experience. */
  public static final long DECK_SPREAD = 2 * MM;

  /** The same when the joists are assumed: one step of section (trade-facts D3 to D5). */
  public static final long DECK_SPREAD_ASSUMED = 50 * MM;

  /** A face that a stud finder gave (behind-the-board L10). */
  public static final long FINDER_SPREAD = 3 * MM;

  /** Door frame and shims: rough opening over the leaf, 2 in by 2-1/2 in (trade-facts D12). */
  public static final long DOOR_WIDER = 51 * MM;

  public static final long DOOR_HIGHER = Length.inches(5, 2).nm();

  /** Round a window, 1/2 in; common practice, no published source. */
  public static final long WINDOW_ROUND = Length.inches(1, 2).nm();

  /** Thinner than this is no wall. */
  public static final long THINNEST_WALL = 50 * MM;

  /** 1-1/2 in by {@code n / d} in. */
  private static Timber dressed(String name, long n, int d) {
    return Timber.solid(name, new Length(PLATE), Length.inches(n, d));
  }

  /** What lies on the framing or masonry towards a room. */
  public static long lining(Lining lining) {
    return switch (lining) {
      case BOARD -> BOARD;
      case PLASTER -> PLASTER;
      case LATH_AND_PLASTER -> LATH_AND_PLASTER;
      case TILE -> TILE;
      case PANEL -> PANEL;
      case OPEN -> 0;
    };
  }

  /**
   * From what is seen up to the joists: stated layers, else the lining, and the straps it hangs on;
   * a boarded garage ceiling with rooms above has the thicker board.
   */
  public static long ceilingLining(Room room, boolean garageUnderRooms) {
    boolean thicker = garageUnderRooms && room.ceiling() == Lining.BOARD;
    long usual = thicker ? GARAGE_CEILING_BOARD : lining(room.ceiling());
    return room.overhead().layersNm(usual) + room.overhead().strapsNm();
  }

  public static long subfloor(FloorSpec floor) {
    return floor.boards() ? FLOORBOARDS : SUBFLOOR;
  }

  /** The stated joists, else {@link #JOIST}. */
  public static Timber joists(FloorSpec floor) {
    return floor.joists().map(f -> f.value()).orElse(JOIST);
  }

  /** Underside of joists (or of a concrete deck) up to the finished floor. */
  public static long deck(FloorSpec floor) {
    return floor.kind() == FloorSpec.Kind.SLAB
        ? CONCRETE_DECK
        : joists(floor).depth().nm() + subfloor(floor);
  }
}
