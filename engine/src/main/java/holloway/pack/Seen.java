package holloway.pack;

import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The pictures of the house in a pack: levels from above, then holes, as files beside the page, and
 * in the page too as long as they fit into {@link #BUDGET}.
 *
 * @param levels from the ground up
 * @param holes by hole id; a hole that nothing could draw has none
 * @param why there are no pictures, empty when there are
 */
record Seen(List<Picture> levels, Map<String, Picture> holes, String why) {
  /** Bytes of pictures that the page carries at most: a third more once written as text. */
  static final int BUDGET = 3_000_000;

  /**
   * @param file its name in the pack's folder
   * @param title what it shows
   * @param inPage whether the page carries it
   */
  record Picture(String file, String title, byte[] png, boolean inPage) {
    /** As an address that carries the picture in it. */
    String inline() {
      return "data:image/png;base64," + Base64.getEncoder().encodeToString(png);
    }
  }

  static Seen of(Plan plan, Pictures pictures, UnaryOperator<String> words) {
    Taking t = new Taking(pictures, words);
    List<Picture> levels = new ArrayList<>();
    for (String level : pictures.levels()) {
      String file = "seen-level-%02d.png".formatted(levels.size() + 1);
      t.take("level", level, file, level, 1100, 760).ifPresent(levels::add);
    }
    Map<String, Picture> holes = new LinkedHashMap<>();
    if (pictures.why().isEmpty()) {
      for (Plan.PlannedHole h : plan.holes()) {
        String file = "seen-hole-" + h.label() + ".png";
        t.take("hole", h.id(), file, h.label(), 900, 640).ifPresent(p -> holes.put(h.id(), p));
      }
    }
    return new Seen(levels, holes, pictures.why());
  }

  List<Picture> all() {
    List<Picture> out = new ArrayList<>(levels);
    out.addAll(holes.values());
    return out;
  }

  /** True when some lie in the folder only. */
  boolean someLeftOut() {
    return all().stream().anyMatch(p -> !p.inPage());
  }

  private static final class Taking {
    private final Pictures pictures;
    private final UnaryOperator<String> words;
    private int left = BUDGET;

    Taking(Pictures pictures, UnaryOperator<String> words) {
      this.words = words;
      this.pictures = pictures;
    }

    Optional<Picture> take(String of, String name, String file, String title, int w, int h) {
      return pictures.png(of, name, w, h, words).map(png -> kept(file, title, png));
    }

    private Picture kept(String file, String title, byte[] png) {
      boolean fits = png.length <= left;
      left -= fits ? png.length : 0;
      return new Picture(file, title, png, fits);
    }
  }
}
