package holloway.check;

import holloway.geometry.SiteFrame;

/**
 * The coordinates of a plan are turned and shifted as the house stands, or whoever lays the plan
 * over a drawing of the site marks the holes elsewhere.
 */
final class FrameRule implements Rule {
  @Override
  public void judge(Evidence evidence, Charge charge) {
    SiteFrame house = evidence.house().framed().placed().site();
    SiteFrame plan = evidence.plan().site();
    if (!plan.equals(house)) {
      charge.plan(
          "turned", "its coordinates are %s, the house stands %s", words(plan), words(house));
    }
  }

  private static String words(SiteFrame f) {
    return f.isOwn()
        ? "not turned"
        : "turned by %s about its corner at %.1f, %.1f mm"
            .formatted(f.turn().words(), f.east() / 1e6, f.north() / 1e6);
  }
}
