package holloway.check;

import holloway.catalog.PriceList;
import holloway.catalog.ShopItem;
import holloway.hollow.SiteKind;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.request.Wishes;
import holloway.survey.Wall;
import java.util.List;
import java.util.Optional;

/**
 * What a plan's materials add to its objective, in minutes of the hour's worth: each metre of route
 * at the price of its own cable, closing each bored hole that joins concealed or parted spaces,
 * steel on both faces of the wood where the bit is wider than goes without.
 */
final class MoneyPrice {
  /** Of 200 ml of a cartridge, 10 ml a hole. */
  private static final double CARTRIDGE_A_HOLE = 0.05;

  /** How far the points of one step may be off, metres. */
  private static final double STEP_METRES = 0.002;

  private static final List<String> CLOSED =
      List.of(
          SiteKind.TOP_PLATE.word(),
          SiteKind.BOTTOM_PLATE.word(),
          SiteKind.PLATE_STACK.word(),
          SiteKind.BLOCK.word(),
          SiteKind.FLOOR.word(),
          SiteKind.CEILING.word(),
          SiteKind.CEILING_AND_FLOOR.word(),
          SiteKind.CHASE_FLOOR.word());

  private final Evidence evidence;
  private final double minutesPerCent;
  private final double seal;
  private final double steel;

  MoneyPrice(Evidence evidence) {
    this.evidence = evidence;
    Request request = evidence.request();
    PriceList prices = request.prices();
    Optional<Wishes.Money> hour = request.wishes().hourIsWorth();
    boolean counts =
        prices.stated()
            && hour.isPresent()
            && hour.get().cents() > 0
            && hour.get().currency().equals(prices.currency());
    minutesPerCent = counts ? 60.0 / hour.get().cents() : 0;
    seal = minutesPerCent * CARTRIDGE_A_HOLE * prices.priceOf(ShopItem.SEALANT).orElse(0);
    steel = minutesPerCent * 2 * prices.priceOf(ShopItem.NAIL_PLATE).orElse(0);
  }

  /** Minutes for a metre of a run; no price, no money. */
  private double metre(Plan.PlannedRun run) {
    return minutesPerCent * evidence.request().prices().metreOf(run.cable()).orElse(0);
  }

  boolean counts() {
    return minutesPerCent > 0;
  }

  /** The least and the most it can be, minutes; two bores of unlike bits leave a choice. */
  double[] range() {
    double cable = 0;
    double slack = 0.001;
    for (Walk.At at : evidence.steps()) {
      double metre = metre(at.run());
      cable += metre * at.pathMm() / 1000;
      slack += metre * STEP_METRES + 0.0001;
    }
    double least = cable;
    double most = cable;
    for (Plan.PlannedHole h : evidence.plan().holes()) {
      var site = evidence.house().findSite(h.id());
      boolean bored = h.works().stream().anyMatch(w -> w.startsWith(h.id() + "/bore/"));
      if (site.isEmpty() || !bored) {
        continue;
      }
      double closing = CLOSED.contains(h.kind()) || parts(h) ? seal : 0;
      boolean plated = h.diameterMm() > site.get().largestBit();
      least += closing + (plated ? steel : 0);
      most += closing + (plated ? steel * h.bores() : 0);
    }
    return new double[] {least - slack, most + slack};
  }

  /** In the wall that parts the garage from the house. */
  private boolean parts(Plan.PlannedHole h) {
    Wall best = null;
    for (Wall w : evidence.house().framed().placed().walls()) {
      boolean mine = h.id().startsWith(w.id() + "/");
      best = mine && (best == null || w.id().length() > best.id().length()) ? w : best;
    }
    return best != null && best.garageSeparation();
  }
}
