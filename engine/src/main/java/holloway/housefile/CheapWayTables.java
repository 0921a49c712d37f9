package holloway.housefile;

import static holloway.housefile.Shape.ALONG;
import static holloway.housefile.Shape.FACE;
import static holloway.housefile.Shape.LENGTH;
import static holloway.housefile.Shape.NAME;
import static holloway.housefile.Shape.ROOM;
import static holloway.housefile.Shape.SIZE;
import static holloway.housefile.Shape.YES_NO;
import static holloway.housefile.Shape.listOf;
import static holloway.housefile.Shape.wordsOf;
import static holloway.housefile.Table.may;
import static holloway.housefile.Table.must;

import holloway.house.Side;
import holloway.house.Soffit;
import holloway.units.Length;

/** Keys of what saves cutting: lowered ceilings, skirting that comes off, old cables. */
final class CheapWayTables {
  private CheapWayTables() {}

  private static final Table.Key COVER =
      may(
          "cover",
          wordsOf(Soffit.Cover.class),
          "board has to be cut and patched (taken unless said); tiles and a panel come out");

  static final Table SOFFIT =
      Table.of(
          "soffit",
          "a hollow box under a ceiling along a wall",
          must("soffit", NAME, "its name"),
          must("along", FACE, "the face it runs along"),
          may("from", ALONG, "from the end of that face to its near end"),
          may("length", LENGTH, "along the face; to the face's end unless said"),
          must("size", SIZE, "as seen: out from the wall x down from the ceiling"),
          COVER);

  static final Table DROPPED_CEILING =
      Table.of(
          "dropped-ceiling",
          "a whole lowered ceiling; the room's ceiling-height is that of the ceiling over it",
          must("dropped-ceiling", NAME, "its name"),
          must("in", ROOM, "the room"),
          must(
              "drop",
              new Shape.Len(Length.mm(50), Length.mm(1_500)),
              "from the ceiling over it down to its underside"),
          COVER);

  static final Table SKIRTING =
      Table.of(
          "skirting",
          "skirting (baseboard) that may be taken off and put back",
          must("skirting", ROOM, "the room it is in"),
          may("sides", listOf(wordsOf(Side.class)), "the sides where it may; all unless said"),
          may(
              "height",
              new Shape.Len(Length.mm(80), Length.mm(500)),
              "of the board; 100 mm (4 in) unless said"));

  static final Table OLD_CABLE =
      Table.of(
          "old-cable",
          "an old cable between two boxes that might draw a new one in after it",
          must("old-cable", NAME, "its name"),
          must("from", new Shape.MapOf(OuterTables.WALL_SPOT), "one end"),
          must("to", new Shape.MapOf(OuterTables.WALL_SPOT), "the other end"),
          must("length", LENGTH, "along it"),
          must("hole", LENGTH, "the narrowest hole it is seen to pass"),
          may(
              "stapled",
              YES_NO,
              "no: known to hang loose (it slides when pulled); it is not used otherwise"));
}
