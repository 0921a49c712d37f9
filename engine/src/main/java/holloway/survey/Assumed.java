package holloway.survey;

import holloway.house.Battens;
import holloway.house.Fact;
import holloway.house.LayoutCorner;
import holloway.units.Length;
import java.util.TreeSet;

/** What of a wall is taken for granted, in words. */
final class Assumed {
  private Assumed() {}

  static void of(Wall w, LayoutCorner layout, Texts texts, TreeSet<String> out) {
    if (!w.isFramed() || w.traits().isSplit()) {
      return; // what is in one between split levels is not taken for anything: it is shut
    }
    if (w.studs().isAssumed()) {
      out.add("%s: studs taken for %s".formatted(w.id(), w.studs().value().name()));
    }
    if (w.every().isAssumed()) {
      out.add(
          "%s: stud spacing taken as %s"
              .formatted(w.id(), texts.units().format(w.every().value())));
    }
    if (w.studOrigin().isAssumed()) {
      out.add(
          "%s: studs taken to be laid out from its %s end, the first at %s; find a stud first"
              .formatted(w.id(), end(w, layout), texts.units().format(first(w, layout))));
    }
    if (w.fill().isAssumed()) {
      String fill = w.fill().value().word();
      out.add("%s: fill taken as %s by the year it was built".formatted(w.id(), fill));
    }
    for (int side = 0; side < 2; side++) {
      w.findBattens(side)
          .filter(b -> !b.level() || b.first().isEmpty())
          .ifPresent(b -> out.add("%s: %s".formatted(w.id(), battens(b, texts))));
    }
    if (w.bearing().isAssumed() && !w.isOuter()) {
      out.add("%s: taken as %s".formatted(w.id(), w.bearing().value() ? "bearing" : "not bearing"));
    }
  }

  /** Upright ones are taken to be fixed to the studs, level ones to be spaced from the floor. */
  private static String battens(Battens b, Texts texts) {
    return b.level()
        ? "level battens taken to lie at every %s from the floor up; find one first"
            .formatted(texts.units().format(b.every().map(Fact::value).orElse(Battens.EVERY)))
        : "upright battens taken to stand on its studs; find one first";
  }

  /** The end that its layout begins at. */
  private static String end(Wall w, LayoutCorner layout) {
    return LaidOut.from(layout, w.frame()).word();
  }

  /** The first stud of an assumed layout, from that end. */
  private static Length first(Wall w, LayoutCorner layout) {
    boolean down = LaidOut.fromHigh(layout, w.frame());
    return new Length(down ? w.length() - w.studOrigin().value() : w.studOrigin().value());
  }
}
