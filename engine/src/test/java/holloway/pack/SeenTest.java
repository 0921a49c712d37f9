package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Pictures of the house in the pack. */
class SeenTest {
  /** Draws everything as so many bytes. */
  private record Bytes(int each) implements Pictures {
    @Override
    public Optional<byte[]> png(
        String of, String name, int width, int height, UnaryOperator<String> words) {
      return of.equals("level") || of.equals("hole")
          ? Optional.of(new byte[each])
          : Optional.empty();
    }

    @Override
    public String why() {
      return "";
    }

    @Override
    public List<String> levels() {
      return List.of("ground");
    }

    @Override
    public void close() {
      // Nothing was opened.
    }
  }

  private static String page(SortedMap<String, byte[]> files) {
    return new String(files.get("index.html"), StandardCharsets.UTF_8);
  }

  private static int shown(String page) {
    return page.split("data:image/png", -1).length - 1;
  }

  @Test
  void levelsAndHolesAreShownAndLieInTheFolder() {
    Plan plan = PackedHouse.get().planned().plan();
    var files = PackedHouse.files(Language.ENGLISH, PaperSize.A4, new Bytes(300));
    assertEquals(1 + plan.holes().size(), shown(page(files)));
    assertTrue(files.containsKey("seen-level-01.png"));
    plan.holes().forEach(h -> assertTrue(files.containsKey("seen-hole-" + h.label() + ".png")));
    assertFalse(page(files).contains(Language.ENGLISH.texts().get("unseen")));
    assertFalse(page(files).contains(Language.ENGLISH.texts().get("more-seen")));
  }

  @Test
  void whatDoesNotFitThePageLiesBesideItAndThePageSaysSo() {
    int third = Seen.BUDGET / 3 + 1;
    var files = PackedHouse.files(Language.ENGLISH, PaperSize.A4, new Bytes(third));
    assertEquals(2, shown(page(files)));
    assertTrue(page(files).contains(Language.ENGLISH.texts().get("more-seen")));
    assertTrue(PackedHouse.get().planned().plan().holes().size() > 1);
    PackedHouse.get()
        .planned()
        .plan()
        .holes()
        .forEach(h -> assertTrue(files.containsKey("seen-hole-" + h.label() + ".png")));
  }

  @Test
  void aPackWithoutPicturesSaysWhy() {
    var files = PackedHouse.files(Language.GERMAN, PaperSize.A4, Pictures.none("no driver here"));
    assertEquals(0, shown(page(files)));
    assertTrue(page(files).contains(Language.GERMAN.texts().get("unseen") + " no driver here"));
    assertTrue(files.keySet().stream().noneMatch(f -> f.startsWith("seen-")));
  }
}
