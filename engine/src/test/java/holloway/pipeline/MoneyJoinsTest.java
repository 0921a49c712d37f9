package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.support.TwoRooms;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** With a price file and an hour's worth, what hangs on the routes costs its minutes. */
class MoneyJoinsTest {
  private static final String HOUSE =
      TwoRooms.UNDER_ONE_ROOF
          + """
      cabinet: { in: den, wall: east, from: south 2 ft, height: 5 ft }
      outlets:
        - { name: desk, in: study, wall: west, from: south 9 ft, height: 16 in, cables: [cat6, cat6] }
      """;

  @TempDir Path folder;
  private Path prices;

  @BeforeEach
  void write() throws Exception {
    // a metre of cat6 is 1 USD, a hole's twentieth of a cartridge too
    prices = shop("100 m: 100", "20");
  }

  private Path shop(String box, String sealant) throws Exception {
    return Files.writeString(
        folder.resolve("prices.yaml"),
        "prices: invented\ncurrency: USD\nboxes: { cat6: { %s } }\nitems: { sealant: %s }\n"
            .formatted(box, sealant));
  }

  private Answers.Planned plan(String wishes, boolean priced) throws Exception {
    Path house = Files.writeString(folder.resolve("house.yaml"), HOUSE + wishes);
    return new Pipeline(Progress.SILENT)
        .plan(
            house,
            PlanSettings.by(priced ? Optional.of(prices) : Optional.empty(), Optional.empty()));
  }

  private static final String HOUR = "wishes: { hour-is-worth: 60 USD }\n";

  @Test
  void aMetreAndASealAddWhatTheyCost() throws Exception {
    Answers.Planned without = plan(HOUR, false);
    Answers.Planned with = plan(HOUR, true);
    assertEquals(List.of(), with.refusals());
    Plan.Totals t = with.plan().totals();
    assertEquals(without.plan().totals().minutes(), t.minutes(), 1e-9, "labour stays labour");
    assertEquals(without.plan().holes(), with.plan().holes());
    assertEquals(2, t.holes());
    // 60 USD an hour: 1 USD is a minute; both holes are in top plates and are sealed
    double money = t.objective() / 10_000.0 - t.minutes();
    assertEquals(t.routeM() + 2, money, 0.001);
    assertEquals(1, (double) t.bound() / t.objective(), 0.01);
    assertEquals(without.plan().totals().objective(), Math.round(t.minutes() * 10_000));
  }

  @Test
  void withoutAnHoursWorthInItsCurrencyNothingIsAdded() throws Exception {
    for (String wishes : List.of("", "wishes: { hour-is-worth: 60 EUR }\n")) {
      Plan.Totals t = plan(wishes, true).plan().totals();
      assertEquals(t.objective(), Math.round(t.minutes() * 10_000), wishes);
    }
  }

  /** A metre of cat6 is 1 USD, one of cat5e half, and fibre without a price costs nothing. */
  @Test
  void eachRunPaysItsOwnCable() throws Exception {
    String mixed = HOUSE.replace("[cat6, cat6]", "[cat6, cat5e, om4]");
    Path house = Files.writeString(folder.resolve("mixed.yaml"), mixed + HOUR);
    Path list =
        Files.writeString(
            folder.resolve("mixed-prices.yaml"),
            "prices: invented\ncurrency: USD\n"
                + "boxes: { cat6: { 100 m: 100 }, cat5e: { 100 m: 50 } }\nitems: { sealant: 20 }\n");
    PlanSettings by = PlanSettings.by(Optional.of(list), Optional.empty());
    Answers.Planned p = new Pipeline(Progress.SILENT).plan(house, by);
    assertEquals(List.of(), p.refusals());
    double cables = 0;
    for (Plan.PlannedRun r : p.plan().runs()) {
      cables += r.routeM() * (r.cable().equals("cat6") ? 1 : r.cable().equals("cat5e") ? 0.5 : 0);
    }
    Plan.Totals t = p.plan().totals();
    assertEquals(cables + t.holes(), t.objective() / 10_000.0 - t.minutes(), 0.001);
    Path file = Files.writeString(folder.resolve("mixed.json"), PlanJson.write(p.plan()));
    assertEquals(List.of(), new Pipeline(Progress.SILENT).referee(house, file, by).refusals());
  }

  @Test
  void dearCableGoesTheShortWay() throws Exception {
    Plan cheap = plan(HOUR, true).plan();
    prices = shop("1 m: 500", "20");
    Plan dear = plan(HOUR, true).plan();
    assertTrue(dear.totals().routeM() < cheap.totals().routeM() - 0.5, dear.totals().toString());
    assertTrue(dear.totals().minutes() > cheap.totals().minutes(), dear.totals().toString());
  }

  @Test
  void theRefereeReckonsItAgain() throws Exception {
    String json = PlanJson.write(plan(HOUR, true).plan());
    Path house = folder.resolve("house.yaml");
    PlanSettings by = PlanSettings.by(Optional.of(prices), Optional.empty());
    Pipeline p = new Pipeline(Progress.SILENT);
    Path file = Files.writeString(folder.resolve("plan.json"), json);
    assertEquals(List.of(), p.referee(house, file, by).refusals());
    List<String> unpriced = p.referee(house, file).refusals();
    assertTrue(unpriced.toString().contains("prices.yaml too"), unpriced.toString());
    var was = java.util.regex.Pattern.compile("\"objective\" ?: ?(\\d+)").matcher(json);
    assertTrue(was.find());
    // a fifth of a minute off
    String off = String.valueOf(Long.parseLong(was.group(1)) + 2000);
    Files.writeString(file, json.replace(was.group(1), off));
    assertFalse(p.referee(house, file, by).refusals().isEmpty());
  }
}
