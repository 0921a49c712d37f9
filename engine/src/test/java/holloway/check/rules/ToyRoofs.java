package holloway.check.rules;

import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.Direction;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.house.Timber;
import holloway.house.Where;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/** A roof over the toy with loose fill and a hatch. */
final class ToyRoofs {
  private ToyRoofs() {}

  /** A hatch of that many millimetres by 800. */
  static Roof hatched(long mm) {
    CeilingSpot at = new CeilingSpot("shop", along(Side.WEST), along(Side.SOUTH), Where.NOWHERE);
    return new Roof(
        "roof",
        Optional.of("ground"),
        List.of(),
        Roof.Shape.GABLE,
        Direction.EAST_WEST,
        Optional.empty(),
        6,
        12,
        fact(300),
        Roof.Frame.TRUSSES,
        Fact.assumed(Timber.solid("2x4", Length.mm(38), Length.mm(89))),
        fact(600),
        Optional.empty(),
        fact(300),
        Fill.LOOSE,
        false,
        List.of(new Roof.Hatch(at, Length.mm(mm), Length.mm(800))),
        List.of(),
        Where.NOWHERE);
  }

  private static Along along(Side side) {
    return new Along(side, fact(1000));
  }

  private static Fact<Length> fact(long mm) {
    return Fact.assumed(Length.mm(mm));
  }
}
