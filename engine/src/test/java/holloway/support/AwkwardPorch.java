package holloway.support;

import java.util.Optional;
import java.util.Random;

/**
 * A porch before the south of the first room, in some awkward houses. It draws from numbers of its
 * own, so that the rest of each house stays as it was.
 */
record AwkwardPorch(String text, String outlet) {
  static Optional<AwkwardPorch> of(AwkwardPlan plan) {
    AwkwardRoom in = plan.ground.get(0);
    Random r = new Random(31L * in.width + in.depth);
    if (in.shape != AwkwardRoom.Shape.WHOLE || in.width < 2000 || r.nextInt(3) > 0) {
      return Optional.empty();
    }
    int out = 900 + 300 * r.nextInt(5);
    String text =
        "{ porch: stoop, side: %s south, from: %s 300 mm, length: %d mm, out: %d mm, height: %d mm, ceiling: %s, roof: %s, run: %s }"
            .formatted(
                in.name,
                pick(r, "west", "east"),
                in.width - 600,
                out,
                2150 + 100 * r.nextInt(4),
                pick(r, "boarded", "open"),
                pick(r, "flat", "shed, pitch: 3/12", "gable, pitch: 30 deg"),
                pick(r, "out", "along"));
    String outlet =
        "{ name: stoop light, under: stoop, from: %s %d mm, out: %d mm, cables: [cat6] }"
            .formatted(
                pick(r, "west", "east"),
                200 + r.nextInt(in.width - 1000),
                150 + r.nextInt(out - 300));
    return Optional.of(new AwkwardPorch(text, outlet));
  }

  private static String pick(Random r, String... words) {
    return words[r.nextInt(words.length)];
  }
}
