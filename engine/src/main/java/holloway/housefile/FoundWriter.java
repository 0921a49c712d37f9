package holloway.housefile;

import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Found;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes what the work uncovered as its companion file. */
final class FoundWriter {
  private FoundWriter() {}

  static Map<String, Object> write(List<Found> all) {
    Map<String, List<Object>> lists = new LinkedHashMap<>();
    List.of("studs", "blocks", "clear-bays", "notches", "holes")
        .forEach(k -> lists.put(k, new ArrayList<>()));
    for (Found f : all) {
      if (f instanceof Found.Stud s) {
        lists.get("studs").add(onFace(s.face(), s.along()).map());
      } else if (f instanceof Found.Block b) {
        lists.get("blocks").add(onFace(b.face(), b.along()).length("height", b.height()).map());
      } else if (f instanceof Found.ClearBay c) {
        lists.get("clear-bays").add(onFace(c.face(), c.along()).map());
      } else if (f instanceof Found.Notch n) {
        lists.get("notches").add(notch(n));
      } else if (f instanceof Found.HoleMade h) {
        Words w = new Words().put("id", h.id()).put("diameter", Words.of(h.diameter()));
        lists.get("holes").add(w.put("cables", String.valueOf(h.cables())).map());
      }
    }
    return new LinkedHashMap<>(lists);
  }

  private static Map<String, Object> notch(Found.Notch n) {
    Words w = new Words();
    if (n.cut() instanceof Found.InStud stud) {
      w = onFace(stud.at().face(), stud.at().along()).length("height", stud.at().height());
    } else if (n.cut() instanceof Found.InJoist joist) {
      w.put(joist.overhead() ? "above-ceiling-of" : "below-floor-of", joist.at().room())
          .put("at", Words.of(joist.at()))
          .put("edge", joist.top() ? "top" : "bottom");
    }
    return w.length("depth", n.deep()).length("length", n.run()).map();
  }

  private static Words onFace(FaceRef face, Along along) {
    return new Words().put("side", Words.of(face)).put("from", Words.of(along));
  }
}
