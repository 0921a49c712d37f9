package holloway.drawing;

import holloway.house.Conduit;
import holloway.house.WallSpot;
import holloway.survey.OnWall;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What joins buildings outside: drawn straight from wall to wall, since only its ends were taped; a
 * stub with the other end's name where that end is on another level.
 */
final class YardLinks {
  /** In front of the wall, millimetres: where {@code hollow.OutdoorLinks} lets a link begin. */
  private static final double OUT = 62;

  private static final double STUB = 600;
  private final Sheet sheet;
  private final Map<String, double[]> named = new LinkedHashMap<>();

  YardLinks(Sheet sheet) {
    this.sheet = sheet;
  }

  void shapes() {
    sheet.svg().open("links");
    sheet.placed().house().conduits().stream()
        .filter(c -> c.outdoor().isPresent())
        .forEach(this::link);
    sheet.svg().close();
  }

  void labels() {
    named.forEach(
        (text, at) ->
            sheet.label(
                "link-name", text, Sheet.SMALL, Labels.around(text, at, Sheet.SMALL, 60, 60)));
  }

  private void link(Conduit c) {
    Optional<OnWall> from = end(c.from());
    Optional<OnWall> to = end(c.to());
    String what = words(c);
    if (from.isPresent() && to.isPresent()) {
      double[] a = Sheet.face(from.get(), OUT);
      double[] b = Sheet.face(to.get(), OUT);
      drawn(c, a, b);
      named.put(what, new double[] {(a[0] + b[0]) / 2, (a[1] + b[1]) / 2});
      return;
    }
    from.ifPresent(s -> stub(c, s, what + ", to " + c.to().face().room()));
    to.ifPresent(s -> stub(c, s, what + ", to " + c.from().face().room()));
  }

  private void stub(Conduit c, OnWall s, String text) {
    double[] tip = Sheet.face(s, OUT + STUB);
    drawn(c, Sheet.face(s, OUT), tip);
    named.put(text, tip);
  }

  private void drawn(Conduit c, double[] a, double[] b) {
    sheet.svg().line("link " + (c.kind().laid() ? "laid" : "duct"), a, b);
    for (double[] p : List.of(a, b)) {
      sheet.svg().circle("link end", c.name(), p, 45);
      sheet.labels().mark(Rect.around(p[0], p[1], 90, 90));
    }
  }

  /** Its kind and length, and how deep or whether it is still to be dug. */
  private String words(Conduit c) {
    String kind =
        switch (c.kind()) {
          case BURIED -> "in the earth";
          case SPAN -> "overhead";
          default -> "duct";
        };
    String depth =
        c.outdoor()
            .flatMap(Conduit.Outdoor::depth)
            .map(d -> ", " + sheet.tape(d.value().nm()) + " deep")
            .orElse("");
    return "%s: %s, %s%s%s"
        .formatted(
            c.name(),
            kind,
            sheet.tape(c.length().value().nm()),
            depth,
            c.dug() ? ", to be dug" : "");
  }

  /** On the outside of its wall, if that is on this level. */
  private Optional<OnWall> end(WallSpot at) {
    if (!sheet.isHere(at.face().room())) {
      return Optional.empty();
    }
    return sheet
        .placed()
        .findSpot(at.face(), at.along(), at.height().value().nm())
        .filter(s -> s.wall().isOuter())
        .map(s -> new OnWall(s.wall(), s.wall().outside(), s.s(), s.z()));
  }
}
