package holloway.report;

import holloway.hollow.UnderJoists;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.survey.Placed;
import holloway.survey.Wall;
import holloway.survey.WallNames;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Ids of stands, bays and walls as a person says them; ids stay in the JSON and on id lines. */
final class PlainWords {
  private final Placed placed;
  private final Request request;
  private final UnitWords units;
  private final PlaceWords places;
  private final List<Wall> walls;

  PlainWords(Placed placed, Request request, UnitWords units) {
    this.placed = placed;
    this.request = request;
    this.units = units;
    this.places = new PlaceWords(placed, units);
    walls = new ArrayList<>(placed.walls());
    // The longest id first, so that an ordinal of two digits is not cut after the first.
    walls.sort(Comparator.comparing((Wall w) -> -w.id().length()).thenComparing(Wall::id));
  }

  /** Where a person stands or reaches in, with the preposition. */
  String stand(Plan.PlannedHole hole) {
    String id = hole.stand();
    if (id.startsWith("room/")) {
      return "in the " + id.substring(5);
    }
    if (id.equals("attic") || id.equals("outside")) {
      return id.equals("attic") ? "in the attic" : id;
    }
    if (id.equals("ladder")) {
      return "outside, on a ladder";
    }
    if (id.startsWith("attic/")) {
      return "in the attic under the " + roof(id.substring(6));
    }
    if (UnderJoists.is(id)) {
      return under(UnderJoists.room(id));
    }
    return patch(id, method(hole.method()));
  }

  private String under(String owner) {
    boolean room = placed.rooms().stream().anyMatch(r -> r.name().equals(owner));
    return room ? "in the " + owner + ", under the joists" : "in the crawlspace";
  }

  /** {@code main roof} and {@code roof} as they are, {@code main} with the word roof. */
  private static String roof(String name) {
    return name.contains("roof") ? name : name + " roof";
  }

  /** The way of opening says the room, the end of the id how high up. */
  private static String patch(String id, String method) {
    String words = method.startsWith("from ") ? method.substring(5) : method;
    Matcher height = Pattern.compile(".*/wall-patch-(low|high)").matcher(id);
    if (height.matches() && words.startsWith("a patch in")) {
      return "through a patch " + height.group(1) + words.substring("a patch".length());
    }
    return words.startsWith("the cut-out") ? "at " + words : "through " + words;
  }

  /** A method without the mark that tells the spots of one outlet apart. */
  String method(String words) {
    String plain = words;
    for (Outlet o : request.outlets()) {
      plain =
          plain.replaceAll(Pattern.quote(o.name()) + "@\\d+", Matcher.quoteReplacement(o.name()));
    }
    return plain.replace("the attic over ", "the attic under the ");
  }

  /** What else was possible, told apart in words. */
  List<String> others(Plan.PlannedHole hole) {
    LinkedHashSet<String> out = new LinkedHashSet<>();
    hole.otherMethods().forEach(m -> out.add(method(m)));
    out.remove(method(hole.method()));
    return List.copyOf(out);
  }

  /** A sentence with the ids of walls and bays put in words. */
  String sentence(String text) {
    String plain = method(text);
    for (Wall w : walls) {
      if (w.id().contains("/") && plain.contains(w.id())) {
        plain = replaced(plain, w);
      }
    }
    return plain;
  }

  private String replaced(String text, Wall w) {
    Matcher m =
        Pattern.compile(Pattern.quote(w.id()) + "(?!\\d)(?:/bay-(\\d+))?(?:/[a-z-]+(?:/\\d+)?)?")
            .matcher(text);
    return m.replaceAll(r -> Matcher.quoteReplacement(spot(w, r.group(1))));
  }

  private String spot(Wall w, String bay) {
    String wall = wall(w);
    return bay == null
        ? "the " + wall
        : "%s from the %s end of the %s"
            .formatted(units.tape(Long.parseLong(bay) * 1_000_000L), PlaceWords.end(w), wall);
  }

  /** A wall by the rooms it parts, and its level. */
  String wall(Wall w) {
    return WallNames.of(w) + " (" + w.level() + ")";
  }

  /** What a crossing without a label is: a cut-out, a patch, or a way that is there already. */
  static String unlabelled(Plan plan, String id) {
    if (id.endsWith("/cut-out")) {
      return "its cut-out";
    }
    String kind = id.substring(id.lastIndexOf('/') + 1);
    if (kind.startsWith("data-box") || kind.startsWith("register")) {
      return kind.startsWith("register") ? "a register" : "a low-voltage box";
    }
    if (!kind.contains("patch") && !kind.contains("boards")) {
      return "existing opening";
    }
    return plan.holes().stream()
        .filter(h -> h.stand().equals(id))
        .findFirst()
        .map(h -> patch(id, h.method()).replaceFirst("^through a ", "the "))
        .orElse(bare(kind));
  }

  private static String bare(String kind) {
    return switch (kind) {
      case "wall-patch-low" -> "a patch low in the wall";
      case "wall-patch-high" -> "a patch high in the wall";
      case "wall-patch-mid", "wall-patch" -> "a patch in the wall";
      default ->
          kind.contains("soffit")
              ? "a patch in the soffit"
              : kind.contains("boards") ? "lifted boards" : "a patch in the ceiling";
    };
  }
}
