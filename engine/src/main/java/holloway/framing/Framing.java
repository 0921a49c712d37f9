package holloway.framing;

import holloway.survey.Placed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The framing stage: members of walls, floors, roofs and finishes from the placed house. */
public final class Framing {
  private Framing() {}

  public static Framed of(Placed placed) {
    List<Member> members = new ArrayList<>();
    BalloonLines lines = BalloonLines.of(placed);
    for (var wall : placed.walls()) {
      if (wall.isFramed()) {
        members.addAll(new WallFramer(wall, lines, placed.house().layout()).members());
        BoardVoid.of(wall).forEach(v -> members.addAll(v.members()));
      } else if (wall.isOpen()) {
        members.addAll(HeaderFramer.members(wall));
      } else {
        members.addAll(MasonryFramer.members(wall));
      }
    }
    List<Deck> decks = new DeckFramer(placed, lines, members).decks();
    List<Attic> attics = new RoofFramer(placed, decks, members).attics();
    FinishFramer.frame(placed, decks, members);
    LoweredFramer.frame(placed, members);
    StairFramer.frame(placed, members);
    BeamFramer.frame(placed, members);
    ObstacleFramer.frame(placed, decks, attics, members);
    Skylights.frame(placed, decks, attics, members);
    PorchFramer.frame(placed, members);
    NeighbourFramer.frame(placed, decks, attics, members);
    members.sort(Comparator.comparing(Member::id));
    return new Framed(placed, members, decks, attics);
  }
}
