package holloway.housefile;

import holloway.house.Conduit;
import holloway.house.TubeWay;
import holloway.house.WallSpot;
import java.util.List;
import java.util.Map;

/** Writes tubes, old cables and links between buildings back. */
final class ConduitWriter {
  private ConduitWriter() {}

  private static Map<String, Object> oldCable(Conduit c) {
    return new Words()
        .put("old-cable", c.name())
        .put("from", end(c.from()))
        .put("to", end(c.to()))
        .length("length", c.length())
        .put("hole", Words.of(c.insideDiameter()))
        .yesNo("stapled", c.kind() == Conduit.Kind.FAST_CABLE)
        .map();
  }

  private static Map<String, Object> outdoor(Conduit c, Conduit.Outdoor o) {
    boolean duct = c.kind() == Conduit.Kind.TUBE;
    Words w =
        new Words()
            .put("outdoor-link", c.name())
            .put("kind", duct ? "duct" : c.kind() == Conduit.Kind.SPAN ? "overhead" : "buried")
            .put("from", end(c.from()))
            .put("to", end(c.to()))
            .length("depth", o.depth());
    return duct
        ? way(c, w.yesNo("there", o.there()).put("inside-diameter", Words.of(c.insideDiameter())))
        : w.length("length", c.length()).map();
  }

  static Map<String, Object> of(Conduit c) {
    if (c.outdoor().isPresent()) {
      return outdoor(c, c.outdoor().get());
    }
    if (c.kind() != Conduit.Kind.TUBE) {
      return oldCable(c);
    }
    Words w =
        new Words()
            .put("conduit", c.name())
            .put("from", end(c.from()))
            .put("to", end(c.to()))
            .put("inside-diameter", Words.of(c.insideDiameter()));
    return way(c, w);
  }

  private static Map<String, Object> way(Conduit c, Words w) {
    if (c.way().pullBoxes() == 0) {
      w.put("bends", bends(c.way().parts().get(0))).length("length", c.length());
    } else {
      w.put("parts", c.way().parts().stream().map(ConduitWriter::part).toList());
    }
    return c.way().holds().isEmpty() ? w.map() : w.put("holds", c.way().holds()).map();
  }

  private static Map<String, Object> part(TubeWay.Part p) {
    return new Words().put("length", Words.of(p.length())).put("bends", bends(p)).map();
  }

  /** Whole quarter turns as their number, else each angle. */
  private static Object bends(TubeWay.Part p) {
    List<Integer> angles = p.angles();
    return angles.stream().allMatch(a -> a == 90)
        ? String.valueOf(angles.size())
        : angles.stream().map(String::valueOf).toList();
  }

  private static Map<String, Object> end(WallSpot at) {
    return new Words().spot(at).map();
  }
}
