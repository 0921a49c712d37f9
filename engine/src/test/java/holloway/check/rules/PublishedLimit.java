package holloway.check.rules;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.limits.CablingFigures;
import holloway.limits.Capstan;
import holloway.limits.EntryFigures;
import holloway.limits.FibreLoss;
import holloway.limits.Figure;
import holloway.limits.FireFigures;
import holloway.limits.JoistNotch;
import holloway.limits.LinkLength;
import holloway.limits.MemberMake;
import holloway.limits.PowerOverCable;
import holloway.limits.PowerWiring;
import holloway.limits.RulePack;
import holloway.limits.SignalFigures;
import holloway.limits.TimberFigures;
import holloway.limits.TubeFill;
import holloway.limits.WiringFigures;
import holloway.plan.Plan;
import holloway.takeoff.CutLength;
import holloway.units.Length;
import java.util.Collections;
import java.util.List;

/** One published limit asked of the code that decides by it. Inches for US timber, else the SI. */
record PublishedLimit(String kind, String args) {
  private static final RulePack US = RulePack.of("us");
  private static final RulePack UK = RulePack.of("uk");
  private static final Length SPAN = Length.mm(4000);

  boolean allows(double x) {
    return switch (kind) {
      case "most" -> x <= figure(arg(0)).value();
      case "least" -> x >= figure(arg(0)).value();
      case "newtons" -> x <= figure(arg(0)).value() * Capstan.POUND;
      case "tube", "area", "fill" -> tube(x);
      case "hole" -> hole((int) x);
      case "slack" -> x <= slack() + 1e-9;
      case "jacket" -> x <= Cable.get(arg(0)).outside().toMm();
      case "straight" ->
          x <= new Capstan(number(0), number(1)).straight(0, number(2), number(3)) + 1e-9;
      case "source", "device", "watts", "volts", "source-volts", "amperes", "lost", "loop" ->
          power(x);
      case "outlet-cord", "cords", "added", "hot", "loss", "loss-outside" -> signal(x);
      case "bend" -> x >= TightTurn.radius(Cable.get(arg(0)), yes(1)) - 1e-9;
      case "turn" -> x <= new Capstan(number(0), 0).turn(1, Math.toRadians(number(1)));
      case "level" -> x <= level();
      default -> kind.startsWith("notch") ? notch(x) : kind.startsWith("joist-uk") ? uk(x) : us(x);
    };
  }

  /** A notch in a joist of args 0 over the span of 4 m, upper edge, unless the kind says else. */
  private boolean notch(double x) {
    Length size =
        args.isEmpty()
            ? Length.ZERO
            : kind.endsWith("uk") ? Length.mm(number(0)) : inches(number(0));
    Length deep = kind.endsWith("uk") ? Length.mm(x) : inches(x);
    Length run = Length.mm(20);
    Length from = Length.mm(SPAN.toMm() * 0.1);
    return switch (kind) {
      case "notch-us" -> US.joistNotch(cut(size, deep, run, from, false)).allowed();
      case "notch-end-us" -> US.joistNotch(cut(size, deep, run, Length.ZERO, true)).allowed();
      case "notch-long-us" ->
          US.joistNotch(cut(size, Length.mm(10), inches(x), from, false)).allowed();
      case "notch-to-us" ->
          US.joistNotch(cut(size, Length.mm(10), run, Length.mm(SPAN.toMm() * x - 20), false))
              .allowed();
      case "notch-uk" -> UK.joistNotch(cut(size, deep, run, from, false)).allowed();
      case "notch-from-of-uk" ->
          UK.joistNotch(cut(Length.mm(200), run, run, Length.mm(SPAN.toMm() * x), false)).allowed();
      case "notch-to-of-uk" ->
          UK.joistNotch(cut(Length.mm(200), run, run, Length.mm(SPAN.toMm() * x - 20), false))
              .allowed();
      case "notch-stud-us" -> US.studNotch(size, inches(x), yes(1)).allowed();
      case "notch-hole-us" -> US.besideNotch(inches(x), Length.ZERO).allowed();
      case "notch-hole-of-uk" -> UK.besideNotch(Length.ZERO, Length.mm(x)).allowed();
      default -> throw new IllegalArgumentException(kind);
    };
  }

  private static JoistNotch cut(Length depth, Length deep, Length run, Length from, boolean end) {
    Length to = from.plus(run);
    return new JoistNotch(
        depth, Length.mm(38), deep, run, true, from, to, SPAN, end, MemberMake.SOLID);
  }

  private boolean tube(double x) {
    double id = kind.equals("fill") ? 1 : number(kind.equals("tube") ? 1 : 0);
    return switch (kind) {
      case "tube" ->
          TubeFill.share(Collections.nCopies((int) x, number(0)), id)
              <= TubeFill.limit((int) x, false);
      case "area" -> x <= TubeFill.limit(3, false) * Math.PI / 4 * id * id;
      default -> x <= TubeFill.limit((int) number(0), yes(1));
    };
  }

  private boolean hole(int cables) {
    Length od = inches(number(0));
    Cable one = new Cable("plain", od, od, Length.ZERO, false, false, false, "the row's");
    return Fit.fits(Collections.nCopies(cables, one), inches(number(1)).toMm());
  }

  /** Metres kept at an end of a run from the cabinet to a desk. */
  private double slack() {
    CutLength cut =
        CutLength.of(new Plan.PlannedRun("r", "cabinet", "desk", arg(1), 10, 10, List.of()));
    return arg(0).equals("cabinet") ? cut.slackFromM() : cut.slackToM();
  }

  private boolean power(double x) {
    if (kind.equals("loop")) {
      return x <= PowerOverCable.pairsetOhms(number(0)) + 1e-9;
    }
    PowerOverCable c = PowerOverCable.ofClass((int) number(0)).orElseThrow();
    double limit =
        switch (kind) {
          case "source" -> c.source();
          case "device" -> c.device();
          case "watts" -> c.source() - c.lossIn(number(1));
          case "volts" -> c.volts() - c.amperes() * number(1);
          case "source-volts" -> c.volts();
          case "lost" -> c.lossIn(number(1));
          default -> c.amperes() / c.pairsets();
        };
    return x <= limit + 1e-9;
  }

  private boolean signal(double x) {
    double limit =
        switch (kind) {
          case "outlet-cord" -> LinkLength.cordAtOutlet(number(0), number(1), number(2));
          case "cords" -> LinkLength.cords(number(0), number(1));
          case "added" -> LinkLength.addedLoss(number(0), yes(1));
          case "hot" -> LinkLength.linkAt(number(0), yes(1));
          case "loss" -> FibreLoss.OM4.of(number(0), (int) number(1), (int) number(2));
          default -> FibreLoss.SINGLE_OUTSIDE.of(number(0), (int) number(1), (int) number(2));
        };
    return x <= limit + 1e-9;
  }

  /** Cat 6 at 26.1 lb a thousand feet, 50 ft level at 0.5, then a turn: pounds. */
  private double level() {
    Capstan c = new Capstan(0.5, Capstan.poundsPerThousandFeet(26.1));
    double pull = c.turn(c.straight(0, 15.24, 0), Math.toRadians(number(0)));
    return pull / Capstan.POUND;
  }

  private boolean us(double x) {
    Length size = args.isEmpty() ? Length.ZERO : inches(number(0));
    return switch (kind) {
      case "joist-us" -> joist(US, size, inches(x), RulePack.centredEdge(size, inches(x)), 0.3);
      case "joist-us-edge" -> joist(US, size, inches(number(1)), inches(x), 0.3);
      case "stud-us" ->
          US.studBore(size, inches(x), RulePack.centredEdge(size, inches(x)), yes(1), yes(2))
              .allowed();
      case "stud-us-edge" -> US.studBore(size, inches(number(1)), inches(x), true, false).allowed();
      case "plate-us" -> US.plateBore(size, inches(x), true).allowed();
      case "i-joist" ->
          US.joistBore(
                  inches(9.5),
                  inches(x),
                  RulePack.centredEdge(inches(9.5), inches(x)),
                  RulePack.centredEdge(inches(9.5), inches(x)),
                  SPAN,
                  SPAN,
                  MemberMake.I_JOIST)
              .allowed();
      case "unplated" -> !US.needsNailPlate(size, inches(x));
      case "open-power" ->
          US.fromPower(inches(x), PowerWiring.OPEN_CONDUCTORS, Length.ZERO).allowed();
      default -> throw new IllegalArgumentException(kind);
    };
  }

  private boolean uk(double x) {
    Length depth = Length.mm(200);
    return switch (kind) {
      case "joist-uk" -> {
        Length d = Length.mm(number(0));
        yield joist(UK, d, Length.mm(x), RulePack.centredEdge(d, Length.mm(x)), 0.3);
      }
      case "joist-uk-along" ->
          joist(UK, depth, Length.mm(20), RulePack.centredEdge(depth, Length.mm(20)), x);
      default ->
          UK.joistSpacing(Length.mm(x), Length.mm(number(0)), Length.mm(number(0))).allowed();
    };
  }

  private static boolean joist(RulePack pack, Length d, Length hole, Length edge, double along) {
    Length at = new Length(Math.round(SPAN.nm() * along));
    return pack.joistBore(d, hole, edge, edge, at, SPAN, MemberMake.SOLID).allowed();
  }

  private static Length inches(double v) {
    return new Length(Math.round(v * Length.NM_PER_INCH));
  }

  private String arg(int i) {
    return args.split(" ")[i];
  }

  private double number(int i) {
    return Double.parseDouble(arg(i));
  }

  private boolean yes(int i) {
    return arg(i).equals("yes");
  }

  static Figure figure(String name) {
    for (Class<?> sheet :
        List.of(
            CablingFigures.class,
            SignalFigures.class,
            EntryFigures.class,
            WiringFigures.class,
            FireFigures.class,
            TimberFigures.class)) {
      try {
        return (Figure) sheet.getField(name).get(null);
      } catch (NoSuchFieldException e) {
        continue;
      } catch (IllegalAccessException e) {
        throw new IllegalStateException(e);
      }
    }
    throw new IllegalArgumentException("no figure " + name);
  }
}
