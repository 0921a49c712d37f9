package holloway.check;

import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Side;
import holloway.house.WallSpot;
import holloway.house.Where;
import holloway.request.Effort;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.request.Wishes;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is wanted in {@link ToyHouse}: cables from a cabinet on its west wall to a desk on its east
 * wall.
 */
public final class ToyRequest {
  static final Map<String, Double> MINUTES =
      Map.ofEntries(
          Map.entry("zone.attic", 25.0), Map.entry("zone.attic-summer-extra", 15.0),
          Map.entry("bore.set-up", 4.0), Map.entry("bore.plate-ply", 2.5),
          Map.entry("bore.stud", 3.0), Map.entry("bore.bit-step", 0.5),
          Map.entry("bore.second", 4.0), Map.entry("stand.attic", 1.5),
          Map.entry("stand.room", 1.0), Map.entry("stand.patch", 1.3),
          Map.entry("stand.cut-out", 2.2), Map.entry("cut-out.board", 10.0),
          Map.entry("patch.wall-board", 55.0), Map.entry("seal.hole", 2.0),
          Map.entry("fish.set-up", 5.0), Map.entry("fish.hand-over", 8.0),
          Map.entry("fish.metre.empty", 1.0), Map.entry("fish.metre.loose", 4.0),
          Map.entry("lay.metre.attic", 1.0), Map.entry("crew.one-factor", 1.4));

  private ToyRequest() {}

  public static Request of() {
    return of(List.of("cat6"));
  }

  public static Request of(List<String> cables) {
    WallSpot cabinet = spot(Side.WEST, 1000, 1200);
    Outlet desk =
        new Outlet(
            "desk",
            List.of(new Spot.OnWall(spot(Side.EAST, 1000, 400), Optional.empty())),
            cables,
            0,
            false,
            "",
            Where.NOWHERE);
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < cables.size(); i++) {
      runs.add(
          new Run(
              "desk/" + cables.get(i) + "-" + (i + 1),
              "cabinet",
              "desk",
              cables.get(i),
              false,
              Optional.empty()));
    }
    return new Request(
        new Request.Cabinet(cabinet, Where.NOWHERE),
        List.of(desk),
        runs,
        Wishes.NONE,
        new Effort(MINUTES, false));
  }

  private static WallSpot spot(Side side, long south, long height) {
    return new WallSpot(
        new FaceRef("shop", side, 1, Where.NOWHERE),
        new Along(Side.SOUTH, Fact.measured(Length.mm(south), Where.NOWHERE)),
        Fact.measured(Length.mm(height), Where.NOWHERE));
  }
}
