package holloway.report;

import holloway.house.Battens;
import holloway.house.Direction;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.FloorSpec;
import holloway.house.Timber;
import holloway.survey.CavityGap;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.Locale;
import java.util.Optional;

/** How a wall or floor is built, in a few words; what was assumed is marked. */
final class FramingWords {
  private FramingWords() {}

  static String wall(Wall w, UnitWords units) {
    StringBuilder out = new StringBuilder();
    w.traits()
        .height()
        .ifPresent(h -> out.append(units.tape(h.value().nm())).append(" high (half-height); "));
    if (w.isOpen()) {
      long drop = w.traits().header().orElseThrow().value().nm();
      return out.append("open under a header that hangs ")
          .append(units.tape(drop))
          .append(" below the ceiling")
          .toString();
    }
    if (w.isFramed()) {
      out.append(w.rows().size() > 1 ? "two rows of " : "");
      out.append(timber(w.studs())).append(" studs every ").append(every(w.every(), units));
      out.append(w.studOrigin().isAssumed() ? ", first stud assumed" : ", studs found");
      out.append(fill(w.fill()));
      w.traits().battens().forEach(b -> out.append(battens(b, units)));
    } else {
      out.append(w.kind().name().toLowerCase(Locale.ROOT));
      out.append(cavity(w, units));
      w.traits()
          .hollow()
          .ifPresent(h -> out.append(", void of ").append(units.tape(h.value().nm())));
    }
    out.append(w.bearing().value() ? ", bearing" : ", not bearing");
    out.append(w.bearing().isAssumed() ? " (assumed)" : "");
    out.append(w.garageSeparation() ? ", garage separation" : "");
    if (w.traits().isSplit()) {
      return out.append(", between split levels: taken as shut").toString();
    }
    out.append(w.isParty() ? ", shared with somebody else (party wall)" : "");
    return out.toString();
  }

  private static String cavity(Wall w, UnitWords units) {
    if (w.traits().cavity().isEmpty()) {
      return "";
    }
    String assumed = w.traits().cavity().get().leaves().isEmpty() ? " (assumed)" : "";
    return CavityGap.of(w)
        .map(g -> ", in two leaves with a gap of %s%s, which is no way for cable")
        .map(t -> t.formatted(units.tape(CavityGap.of(w).orElseThrow().length()), assumed))
        .orElse(", said to have a cavity but too thin for one: taken as solid");
  }

  private static String battens(Battens b, UnitWords units) {
    return ", %s battens %s deep before it%s (where they are is assumed)"
        .formatted(
            b.level() ? "level" : "upright",
            units.tape(b.depth().value().nm()),
            b.side().map(s -> " towards rooms with it on their " + s.word()).orElse(""));
  }

  static String floor(FloorSpec f, UnitWords units) {
    if (f.kind() == FloorSpec.Kind.SLAB) {
      return "slab";
    }
    Optional<Fact<Timber>> joists = f.joists();
    return "%s joists every %s, run %s%s%s%s%s"
        .formatted(
            joists.map(FramingWords::timber).orElse("unknown"),
            every(f.every(), units),
            f.run() == Direction.EAST_WEST ? "east-west" : "north-south",
            f.origin().isPresent() ? ", first joist found" : ", first joist assumed",
            f.blocksAt().isEmpty() ? "" : ", rows of blocks between them: " + f.blocksAt().size(),
            f.clearOverWalls() ? ", no blocks over the walls below" : "",
            f.crawlspace().isPresent() ? ", crawlspace below" : "");
  }

  private static String timber(Fact<Timber> t) {
    return t.value().name() + (t.isAssumed() ? " (assumed)" : "");
  }

  private static String every(Fact<Length> every, UnitWords units) {
    return units.tape(every.value().nm()) + (every.isAssumed() ? " (assumed)" : "");
  }

  private static String fill(Fact<Fill> fill) {
    String word = fill.value().word();
    return ", fill " + word + (fill.isAssumed() ? " (assumed)" : "");
  }
}
