package holloway.report;

import holloway.geometry.Point3;
import holloway.hollow.UnderJoists;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import holloway.survey.WallNames;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What ids of hollows, stands and crossings mean, in words; the ids themselves stay in the JSON.
 */
final class HouseWords {
  private static final String PORCH = "outside/porch ";

  private final Placed placed;

  HouseWords(Placed placed) {
    this.placed = placed;
  }

  /** A name or a sentence without the numbers that tell the spots of one outlet apart. */
  static String plain(String text) {
    return text.replaceAll("@\\d+", "");
  }

  /** Where a person is while making a hole. */
  String stand(Plan.PlannedHole h) {
    String method = plain(h.method());
    if (!method.startsWith("from ")) {
      return stand(h.stand());
    }
    String place = method.substring(5);
    if (place.startsWith("outside")) {
      return place;
    }
    if (place.startsWith("a ladder")) {
      return "on " + place;
    }
    boolean opened =
        place.matches("(the cut-out|a patch|lifted boards|the low-voltage box|the register).*");
    return (opened ? "at " : "in ") + place;
  }

  private String stand(String id) {
    if (id.startsWith("room/")) {
      return "in the " + id.substring(5);
    }
    return id.startsWith("attic") ? "in " + attic(id) : plain(id);
  }

  /** A zone that is set up, by the words of the totals. */
  static String zone(String zone) {
    return switch (zone) {
      case "attic" -> "going into the attic";
      case "attic-low" -> "going into the low attic";
      case "crawlspace" -> "going into the crawlspace";
      case "cellar" -> "working overhead in the cellar";
      case "ladder" -> "setting up the ladder";
      default -> zone;
    };
  }

  private String attic(String id) {
    long enterable =
        placed.house().roofs().stream()
            .filter(r -> !r.hatches().isEmpty() || joined(r.name()))
            .count();
    boolean named = enterable > 1 && id.startsWith("attic/");
    return named ? "the attic under the " + id.substring(6) : "the attic";
  }

  /** True if an opening leads into this roof's attic or out of it. */
  private boolean joined(String roof) {
    return placed.house().roofs().stream()
        .flatMap(
            r ->
                r.joins().stream().filter(j -> !j.shut()).flatMap(j -> Stream.of(r.name(), j.to())))
        .anyMatch(roof::equals);
  }

  /** The hollow of a leg: which one, and behind whose wall. */
  String leg(Plan.PlanStep s) {
    String kind = s.hollow().orElse("hollow");
    String id = s.id();
    return switch (kind) {
      case "open room surface" -> surface(id);
      case "stud bay" -> inside(s, "inside the ");
      case "furred bay", "void behind dabbed board", "void between level battens" ->
          inside(s, "behind the board of the ");
      case "void between battens" -> "over the strapped ceiling of the " + part(id, 0);
      case "channel" -> inside(s, "a channel cut in the ");
      case "return-air space" -> inside(s, "the return-air space in the ");
      case "joist bay" -> between(s);
      case "attic" -> attic(id);
      case "crawlspace" -> "the crawlspace";
      case "chase" -> "the " + part(id, 1);
      case "outside face" ->
          id.startsWith(PORCH) ? "under the joists over porch " + porch(id) : "along the outside";
      case "void over a porch ceiling" -> "over the ceiling of porch " + porch(id);
      case "skirting" -> "behind the skirting in the " + part(id, 0);
      case "soffit", "lowered ceiling" ->
          (id.startsWith("stairs/") ? "the closed space under the " : "over the ") + part(id, 1);
      default -> "the " + kind + (id.contains("/") ? " " + part(id, 1) : "");
    };
  }

  private static String porch(String id) {
    return id.substring(PORCH.length()).split("/")[0];
  }

  private String surface(String id) {
    if (UnderJoists.is(id)) {
      return "under the joists in the " + UnderJoists.room(id);
    }
    if (id.startsWith("stairs/")) {
      return "in the cupboard under the " + part(id, 1);
    }
    String room = id.replaceFirst("/surface$", "");
    boolean plain =
        placed.rooms().stream().filter(r -> r.name().equals(room)).anyMatch(r -> r.room().plain());
    return (plain ? "open in the " : "in sight in the ") + room;
  }

  private String inside(Plan.PlanStep s, String lead) {
    return wall(s.id(), s.path().get(0)).map(w -> lead + w).orElse(lead + "wall");
  }

  private Optional<String> wall(String id, Point3 at) {
    return placed.walls().stream()
        .filter(w -> id.startsWith(w.id() + "/"))
        .max(Comparator.comparingInt((Wall w) -> w.id().length()))
        .map(w -> WallNames.at(w, w.frame().toLocal(at).x()));
  }

  private String between(Plan.PlanStep s) {
    Optional<String> over = first(s, this::below).map(r -> "over the " + r.name());
    return "between the joists"
        + over.or(() -> first(s, this::above).map(r -> "under the " + r.name()))
            .map(w -> " " + w)
            .orElse("");
  }

  private static Optional<PlacedRoom> first(
      Plan.PlanStep s, Function<Point3, Optional<PlacedRoom>> find) {
    return s.path().stream().map(find).flatMap(Optional::stream).findFirst();
  }

  private Optional<PlacedRoom> below(Point3 p) {
    return placed.rooms().stream()
        .filter(r -> r.outline().contains(p.plan()) && r.ceilingZ() <= p.z())
        .max(Comparator.comparingLong(PlacedRoom::ceilingZ));
  }

  private Optional<PlacedRoom> above(Point3 p) {
    return placed.rooms().stream()
        .filter(r -> r.outline().contains(p.plan()) && r.floorZ() >= p.z())
        .min(Comparator.comparingLong(PlacedRoom::floorZ));
  }

  /** A crossing that has no label: an outlet's cut-out, a patch, or a way that is there already. */
  String crossing(Plan.PlanStep s) {
    String id = s.id();
    Point3 at = s.path().get(0);
    if (id.startsWith("conduit/") && isOutdoors(part(id, 1))) {
      return "the end of the link " + part(id, 1);
    }
    if (id.startsWith("conduit/")) {
      return "the box at the end of the " + part(id, 1);
    }
    if (id.endsWith("/cut-out")) {
      return "the cut-out of " + plain(id.substring(0, id.length() - 8));
    }
    if (id.startsWith("stairs/")) {
      return id.endsWith("/wall-patch-panel")
          ? "a patch in the panel under the " + part(id, 1)
          : "the well of the " + part(id, 1);
    }
    int patch = id.indexOf("/wall-patch-");
    if (patch >= 0) {
      String where = id.substring(patch + 12).replaceFirst("^mid$", "half-way up");
      return "a patch " + where + " in the " + wall(id, at).orElse("wall");
    }
    if (id.contains("/soffit-patch-")) {
      return "a patch in the underside of the " + part(id, 1);
    }
    if (id.contains("/data-box-") || id.contains("/register-")) {
      String what = id.contains("/data-box-") ? "low-voltage box" : "register";
      return "the " + what + " in the " + wall(id, at).orElse("wall");
    }
    if (id.contains("/skirting-corner/")) {
      return "round the corner";
    }
    if (id.contains("/ceiling-patch")) {
      return "a patch in the ceiling" + below(at).map(r -> " of the " + r.name()).orElse("");
    }
    if (id.contains("/lifted-boards")) {
      return "lifted boards" + above(at).map(r -> " in the " + r.name()).orElse("");
    }
    if (id.startsWith("chase/")) {
      return "the opening of the " + part(id, 1) + (id.endsWith("attic") ? " into the attic" : "");
    }
    if (id.startsWith("attic/") && id.contains("/way-to-")) {
      return "the opening from the attic under the "
          + part(id, 1)
          + " into that under the "
          + id.substring(id.indexOf("/way-to-") + 8);
    }
    if (id.startsWith(PORCH) && id.contains("/edge-")) {
      return "the open edge of porch " + porch(id);
    }
    if (UnderJoists.leadsOn(id)) {
      return "on below the joists of the next floor";
    }
    return id.contains("/open-ceiling/")
        ? "the open ceiling of the " + part(id, 0)
        : id.contains("/knockout/")
            ? "a knockout in a steel stud"
            : id.contains("/open-end-") ? "the open end of the joists" : "an opening that is there";
  }

  private boolean isOutdoors(String conduit) {
    return placed.house().conduits().stream()
        .anyMatch(c -> c.name().equals(conduit) && c.outdoor().isPresent());
  }

  private static String part(String id, int index) {
    String[] parts = id.split("/");
    return index < parts.length ? parts[index] : id;
  }

  /** What has to be found before a hole whose place is assumed is bored; as on its card. */
  static String findFirst(String kind) {
    return kind.contains("joist") ? "find the joist first" : "find the stud first";
  }
}
