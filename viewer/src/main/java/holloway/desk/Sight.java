package holloway.desk;

import holloway.look.Area;
import holloway.look.Bodies;
import holloway.look.Pane;
import holloway.session.Shown;
import holloway.view.Model;
import holloway.view.Orbit;

/**
 * One plan as it is seen in a part of the window; what stands in the house is kept while it may.
 */
final class Sight {
  private Model bodiesOf;
  private Shown bodiesShown;
  private Bodies bodies;
  private Pane pane;

  Pane pane() {
    return pane;
  }

  void look(Model model, Shown shown, Orbit orbit, Area area, float scale) {
    Seen seen = new Seen(model, shown);
    if (bodiesOf != model || !sameBodies(shown)) {
      bodies = seen.bodies();
      bodiesOf = model;
      bodiesShown = shown;
    }
    pane = seen.pane(bodies, orbit, area, scale);
  }

  /** What is drawn of the house does not change with a page turned or a help shown. */
  private boolean sameBodies(Shown s) {
    Shown b = bodiesShown;
    return b != null
        && b.peel() == s.peel()
        && b.hiddenLevels().equals(s.hiddenLevels())
        && b.choice().equals(s.choice())
        && b.fat() == s.fat()
        && b.light() == s.light();
  }
}
