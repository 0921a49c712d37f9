package holloway.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.cli.Said;
import holloway.support.Rough;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever is done to a rule file, it is taken or refused with words. A slice; {@code
 * -Dholloway.fuzz.rules=N} takes more.
 */
class RulesFuzzTest {
  private static final int COUNT = Integer.getInteger("holloway.fuzz.rules", 160);

  /** Of what is taken each so manieth is planned with. */
  private static final int PLAN_EVERY = 25;

  private static final String HOUSE =
      """
      house: Two rooms (invented)
      place: us
      built: 1994
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
        upper: { floor: { joists: 2x10, every: 16 in, run: east-west }, ceiling-height: 8 ft }
      rooms:
        den: { level: ground, size: 10 ft x 10 ft }
        loft: { level: upper, size: 10 ft x 10 ft, above: den, align: south-west }
      things:
        - { socket, in: loft, wall: south, from: west 2 ft, height: 12 in }
      roof:
        - { over: upper, shape: gable, ridge: east-west, pitch: 6/12, frame: trusses }
      cabinet: { in: den, wall: south, from: west 2 ft, height: 5 ft }
      outlets:
        - { name: desk, in: loft, wall: south, from: east 2 ft, height: 16 in, cables: [cat6] }
      """;

  @TempDir Path folder;
  private Path house;
  private Path rules;
  private int planned;

  @Test
  void everyMutantIsTakenOrRefused() throws Exception {
    house = Files.writeString(folder.resolve("house.yaml"), HOUSE);
    rules = folder.resolve("rules.yaml");
    String text = Files.readString(Path.of("../samples/rules/brookfield.yaml"));
    Map<String, Object> tree = TreeText.read(text);
    List<String> faults = new ArrayList<>();
    int taken = 0;
    for (int i = 0; i < COUNT; i++) {
      Random r = new Random(20_261_126L + i);
      byte[] mutant =
          switch (i % 3) {
            case 0 -> ByteMutator.mutate(bytes(text), r);
            case 1 -> bytes(TokenMutator.mutate(text, r));
            default -> bytes(TreeMutator.mutate(tree, r));
          };
      Files.write(rules, mutant);
      if (ends(i, "check", Set.of(0, 3), faults, List.of()) == 0 && taken++ % PLAN_EVERY == 0) {
        ends(i, "plan", Set.of(0, 3, 4, 5), faults, List.of(Rough.WORDS));
        planned++;
      }
    }
    assertEquals(List.of(), faults);
    assertTrue(taken > COUNT / 20 && taken < COUNT, taken + " of " + COUNT + " were taken");
    assertTrue(planned > 0);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private int ends(int i, String verb, Set<Integer> with, List<String> faults, List<String> more) {
    List<String> args =
        new ArrayList<>(List.of(verb, house.toString(), "--rules", rules.toString()));
    args.addAll(more);
    Said said = Said.whole(args.toArray(String[]::new));
    String words = said.err();
    int code = said.code();
    if (!with.contains(code) || code == 3 && words.isBlank() || words.contains("\tat ")) {
      faults.add("mutant " + i + ": " + verb + " ends with " + code + ": " + words);
    }
    return code;
  }
}
