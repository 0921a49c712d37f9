package holloway.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Works that open a way, by their ids as the router spells them. */
class OpenedWordsTest {
  private static void says(String words, String id) {
    assertEquals(Optional.of(words), OpenedWords.of(id));
  }

  @Test
  void everyKindHasItsWords() {
    says("the trench for garden duct", "conduit/garden duct/dug");
    says("the wire to be strung for yard line", "conduit/yard line/strung");
    says("the floor along the skirting in the back room", "skirting/back room/set-up");
    says(
        "the skirting in the back room", "back room/skirting/north-ground/hall-back room/1-40/off");
    says("the tiles of the lowered ceiling office tiles", "soffit/office tiles/opened");
    says(
        "the channel for loudspeaker",
        "ground/front room-outside/2/channel-1/3140/to/front room/floor/6880-3630/from/loudspeaker");
  }

  @Test
  void otherWorksHaveNone() {
    assertEquals(Optional.empty(), OpenedWords.of("upper/a-b/1/bay-40/wall-patch-low"));
    assertEquals(Optional.empty(), OpenedWords.of("loudspeaker/cut-out"));
  }
}
