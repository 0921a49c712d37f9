package holloway.housefile;

import holloway.house.Fact;
import holloway.house.Thing;
import holloway.house.WallSpot;
import holloway.units.Length;
import java.util.function.Supplier;

/**
 * The usual size of things seen in rooms. A single plate is 70 by 114 mm (F6), switches hang at 48
 * in (D19), sockets as data boxes (D18); the rest is common practice, no published source.
 */
record ThingSize(Fact<Length> centre, Length width, Length height) {
  static ThingSize of(Thing.Kind kind, Supplier<Fact<Length>> box) {
    return switch (kind) {
      case SOCKET, DATA_BOX -> new ThingSize(box.get(), Length.mm(70), Length.mm(114));
      case SWITCH -> at(1220, 70, 114);
      case LIGHT -> at(1900, 150, 200);
      case FLUORESCENT_LIGHT -> at(2000, 1200, 150);
      case MOTOR -> at(1200, 400, 400);
      case TAP -> at(1000, 150, 150);
      case TOILET -> at(400, 500, 800);
      case RADIATOR -> at(450, 1000, 600);
      case REGISTER -> at(150, 300, 150);
      case RETURN_GRILLE -> at(300, 500, 400);
      case PANEL -> at(1500, 370, 750);
      case FURNITURE -> at(1000, 600, 2000);
    };
  }

  private static ThingSize at(int centre, int width, int height) {
    return new ThingSize(
        Fact.assumed(Length.mm(centre), Length.mm(100)), Length.mm(width), Length.mm(height));
  }

  /** Half its height above its centre. */
  Length topOver(WallSpot spot) {
    return new Length(spot.height().value().nm() + height.nm() / 2);
  }
}
