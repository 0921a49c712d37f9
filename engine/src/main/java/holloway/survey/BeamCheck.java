package holloway.survey;

import holloway.house.Beam;
import holloway.house.House;
import java.util.List;

/** Whether stated beams lie in their rooms and under their ceilings. */
final class BeamCheck {
  private BeamCheck() {}

  static void check(House house, List<PlacedRoom> rooms, Texts texts, Problems problems) {
    for (Beam b : house.beams()) {
      rooms.stream()
          .filter(r -> r.name().equals(b.room()))
          .findFirst()
          .ifPresent(r -> check(b, r, texts, problems));
    }
  }

  private static void check(Beam b, PlacedRoom room, Texts texts, Problems problems) {
    if (PlacedBeam.of(room, b).isEmpty()) {
      problems.add(
          b.where(),
          "beam %s lies outside %s: %s from its %s side",
          b.name(),
          room.name(),
          texts.length(b.from().distance().value().nm()),
          b.from().from().word());
    }
    if (b.drop().value().nm() >= room.ceilingZ() - room.floorZ()) {
      problems.add(
          b.where(),
          "beam %s would hang %s below a ceiling that is %s high",
          b.name(),
          texts.length(b.drop().value().nm()),
          texts.length(room.ceilingZ() - room.floorZ()));
    }
  }
}
