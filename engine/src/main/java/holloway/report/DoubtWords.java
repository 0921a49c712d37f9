package holloway.report;

import holloway.survey.Misclosure;
import holloway.survey.Placed;
import holloway.survey.SharedOut;
import holloway.survey.Step;
import holloway.survey.UnaccountedSpace;
import java.util.ArrayList;
import java.util.List;

/**
 * Loops that do not close, loops whose small miss was spread, and space that nothing accounts for,
 * in the reader's units.
 */
final class DoubtWords {
  /** So many spread loops are written out, the largest first; the rest is counted. */
  private static final int WRITTEN_OUT = 5;

  private final Placed placed;
  private final UnitWords units;

  DoubtWords(Placed placed, UnitWords units) {
    this.placed = placed;
    this.units = units;
  }

  /** Writes every loop that is out, to be added again with a pencil; returns how many. */
  int misclosures(Page page, String lead) {
    placed.misclosures().forEach(m -> write(m, page, lead));
    return placed.misclosures().size();
  }

  private void write(Misclosure m, Page page, String lead) {
    page.put(
        "  - ",
        "%s%s: off by %s, %s would be usual; walk it:"
            .formatted(lead, m.where(), units.tape(m.size().nm()), units.tape(m.tolerance().nm())));
    if (m.steps().isEmpty()) {
      page.put("      ", String.join(", ", m.measurements()));
    }
    for (Step s : m.steps()) {
      page.put(
          "      %s%-15s +-%-9s sum %-16s "
              .formatted(
                  s.value().nm() < 0 ? "-" : "+",
                  units.tape(Math.abs(s.value().nm())),
                  units.tape(s.spread().nm()),
                  units.tape(s.sum().nm())),
          s.what());
    }
    m.verdict().forEach(v -> page.put("      ", v));
  }

  List<String> shared() {
    List<String> out = new ArrayList<>();
    placed.shared().stream().limit(WRITTEN_OUT).map(this::line).forEach(out::add);
    int more = placed.shared().size() - WRITTEN_OUT;
    if (more > 0) {
      out.add("%s more, each off by less".formatted(UnitWords.count(more, "loop")));
    }
    return out;
  }

  private String line(SharedOut s) {
    return "%s: off by %s going round (%s allowed), spread over its %d measurements; none was moved by more than %s (%s)"
        .formatted(
            s.where(),
            units.tape(s.size().nm()),
            units.tape(s.tolerance().nm()),
            s.count(),
            atMost(s.moved().nm()),
            s.most());
  }

  /** Rounded up to what a tape shows, so that it stays true. */
  private String atMost(long nm) {
    return units.tape(nm + units.half());
  }

  List<String> unaccounted() {
    return placed.spaces().stream().map(this::line).toList();
  }

  private String line(UnaccountedSpace u) {
    long wide = u.outline().xRange().hi() - u.outline().xRange().lo();
    long deep = u.outline().yRange().hi() - u.outline().yRange().lo();
    String behind =
        u.touches().isEmpty()
            ? ""
            : ", behind "
                + String.join(", ", u.touches().stream().map(t -> t.face().toString()).toList());
    return "%s level: %s by %s (%s) that no room or wall accounts for%s%s; likely %s: %s"
        .formatted(
            String.join(" and ", u.levels()),
            units.tape(wide),
            units.tape(deep),
            units.area(u.areaM2()),
            behind,
            u.underRoof() ? ", up to the roof" : "",
            u.likely(),
            u.serves());
  }
}
