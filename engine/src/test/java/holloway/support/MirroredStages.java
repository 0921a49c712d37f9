package holloway.support;

import holloway.framing.Framed;
import holloway.framing.Framing;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Point2;
import holloway.hollow.AccessPlace;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.Hollows;
import holloway.hollow.Site;
import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import holloway.routing.Ends;
import holloway.routing.Routing;
import holloway.survey.Placed;
import holloway.survey.Survey;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * What each stage makes of a house, up to the routing graph, as lines that hold no id and nothing
 * that is counted from one side: two houses that are one in a mirror have the same lines, each as
 * often. So what a search makes of them can be told from what the house is.
 */
public final class MirroredStages {
  private static final Set<MemberKind> SHEETS =
      EnumSet.of(MemberKind.LINING, MemberKind.SUBFLOOR, MemberKind.SLAB);

  /** Millimetres that a step may reach past a corner. */
  private static final long STEP = 30;

  /** What steps along a slanting edge may add to an area: one part in so many. */
  private static final long STEPS = 50;

  private static final long THIN = 300_000_000;

  private final Map<String, List<Told>> stages = new LinkedHashMap<>();
  private final Reflected seen;
  private final HollowHouse house;
  private final Map<String, String> spaces = new TreeMap<>();

  private MirroredStages(Path file, List<Turned> ways) {
    Reading.Sound read = (Reading.Sound) HouseFile.read(file);
    Placed placed = Survey.of(read.house()).value();
    Ends ends = Ends.of(placed, read.request());
    Framed framed = Framing.of(placed);
    seen = new Reflected(placed, ways);
    house = Hollows.of(framed, ends.interests());
    stage(
        "members",
        framed.members().stream().filter(m -> !isSheet(m) && !isVault(m)).toList(),
        Member::id,
        this::line);
    stages.put("sheets", sheets(framed));
    stage("hollows", house.hollows(), Hollow::id, this::line);
    house.hollows().forEach(h -> spaces.put(h.id(), h.kind() + " at " + line(h).hashCode()));
    stage("crossings", house.sites(), Site::id, this::line);
    stage("accesses", house.accesses(), AccessPlace::id, this::line);
    Routing.Routed routed = Routing.of(house, ends.besideStuds(house), read.request());
    stages.putAll(new GraphLines(routed.graph(), seen).stages());
  }

  private <T> void stage(
      String name, List<T> things, Function<T, String> id, Function<T, String> line) {
    stages.put(name, things.stream().map(t -> new Told(id.apply(t), line.apply(t))).toList());
  }

  /**
   * Where a house and its image part, first the stage that is to blame; empty if they are one.
   *
   * @param ways the mirrors, one after the other, in which {@code image} is seen
   * @param most lines of each side that are told
   */
  public static List<String> faults(Path file, Path image, List<Turned> ways, int most) {
    Map<String, List<Told>> one = new MirroredStages(file, ways).stages;
    Map<String, List<Told>> other = new MirroredStages(image, List.of()).stages;
    List<String> out = new ArrayList<>();
    for (String stage : one.keySet()) {
      List<List<Told>> apart = Told.apart(one.get(stage), other.get(stage));
      List<Told> here = apart.get(0);
      List<Told> there = apart.get(1);
      if (here.size() + there.size() > 0) {
        out.add(
            "%s: %d of %d are not in the mirror, %d are only there"
                .formatted(stage, here.size(), one.get(stage).size(), there.size()));
        here.stream().limit(most).forEach(l -> out.add("  here  " + l));
        there.stream().limit(most).forEach(l -> out.add("  there " + l));
      }
    }
    return out;
  }

  /** Boards under a slope are cut into boxes one way or the other too; they are not compared. */
  private static boolean isVault(Member m) {
    return m.kind() == MemberKind.LINING && m.frame().w().z() < 1;
  }

  private static boolean isSheet(Member m) {
    boolean lies = m.frame().w().z() == 1 && m.box().z().length() < THIN;
    return SHEETS.contains(m.kind()) && lies || m.kind() == MemberKind.NOT_OURS;
  }

  /**
   * Sheets that lie are cut into boxes one way or the other, in steps along a slanting edge: they
   * are told as what they cover.
   */
  private List<Told> sheets(Framed framed) {
    Map<String, List<Geometry>> sheets = new TreeMap<>();
    for (Member m : framed.members()) {
      if (isSheet(m)) {
        long low = Reflected.millimetres(m.frame().toWorld(0, 0, m.box().z0()).z());
        long high = Reflected.millimetres(m.frame().toWorld(0, 0, m.box().z1()).z());
        String which = m.kind() + " from " + low + " to " + high;
        sheets.computeIfAbsent(which, k -> new ArrayList<>()).add(seen.plan(m.frame(), m.box()));
      }
    }
    List<Told> out = new ArrayList<>();
    sheets.forEach(
        (which, parts) -> {
          Geometry all = UnaryUnionOp.union(parts);
          for (int i = 0; i < all.getNumGeometries(); i++) {
            Geometry g = all.getGeometryN(i);
            Envelope e = g.getEnvelopeInternal();
            out.add(
                new Told(
                    "sheet " + i,
                    which,
                    new Told.Measure("west", (long) e.getMinX(), STEP),
                    new Told.Measure("east", (long) e.getMaxX(), STEP),
                    new Told.Measure("south", (long) e.getMinY(), STEP),
                    new Told.Measure("north", (long) e.getMaxY(), STEP),
                    new Told.Measure("area", (long) g.getArea(), (long) g.getArea() / STEPS)));
          }
        });
    return out;
  }

  private String line(Member m) {
    return m.kind() + (m.assumed() ? " assumed " : " ") + seen.box(m.frame(), m.box());
  }

  private String line(Hollow h) {
    List<String> area = new ArrayList<>();
    for (Point2 p : h.area().map(a -> a.corners()).orElse(List.of())) {
      area.add(seen.at(p));
    }
    area.sort(null);
    return "%s %s %s box %s area %s"
        .formatted(h.kind(), h.fill(), h.blind(), seen.box(h.frame(), h.clear()), area);
  }

  private String line(Site s) {
    String a = seen.at(s.a()) + " in " + space(s.hollowA());
    String b = seen.at(s.b()) + " in " + space(s.hollowB());
    List<String> layers = new ArrayList<>();
    s.layers().forEach(l -> layers.add(l.what() + " " + Reflected.millimetres(l.thickness())));
    boolean turned = a.compareTo(b) > 0;
    if (turned) {
      Collections.reverse(layers);
    }
    return "%s from %s to %s %s %d/%d%s%s"
        .formatted(
            s.kind(),
            turned ? b : a,
            turned ? a : b,
            layers,
            s.largestBit(),
            s.platedBit(),
            s.made() ? " made" : "",
            s.assumed() ? " assumed" : "");
  }

  private String line(AccessPlace p) {
    return p.kind() + " " + seen.at(p.at()) + " from " + p.room() + " of " + space(p.hollow());
  }

  private String space(String id) {
    return spaces.getOrDefault(id, "?");
  }
}
