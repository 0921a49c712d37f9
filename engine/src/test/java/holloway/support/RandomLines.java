package holloway.support;

import java.util.Random;

/** Draws of one stream of chance, and the lines they are written into. */
class RandomLines {
  private static final String[] FILLS = {
    "empty", "faced-batt", "unfaced-batt", "loose", "dense-packed", "foam", "unknown"
  };

  final Random r;
  final StringBuilder out;

  RandomLines(Random r, StringBuilder out) {
    this.r = r;
    this.out = out;
  }

  final String spacing() {
    return pick("16 in", "24 in", "400 mm", "600 mm", "16 in");
  }

  final String fill() {
    return pick(FILLS);
  }

  final String pick(String... words) {
    return words[r.nextInt(words.length)];
  }

  final boolean chance(int percent) {
    return r.nextInt(100) < percent;
  }

  static String mm(long tenths) {
    return "%s%d.%d mm"
        .formatted(tenths < 0 ? "-" : "", Math.abs(tenths) / 10, Math.abs(tenths) % 10);
  }

  final void line(String words, Object... parts) {
    out.append(words.formatted(parts)).append('\n');
  }
}
