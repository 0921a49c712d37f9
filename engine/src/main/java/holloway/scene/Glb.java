package holloway.scene;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holloway.geometry.SiteFrame;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A scene as a binary glTF 2.0 file: metres, y up. Members hang under a node for each layer and
 * level, used hollows, runs and holes under one each, so that a viewer can hide them together;
 * every node has the id of its thing in its extras.
 */
public final class Glb {
  private static final double METRE = 1e-3;

  /** Holes are drawn this much past both ends of the bore, millimetres. */
  private static final double PAST = 15;

  private final ObjectNode root = JsonNodeFactory.instance.objectNode();
  private final ArrayNode nodes;
  private final GlbBytes bytes;
  private final Map<String, Integer> cubes = new TreeMap<>();
  private ObjectNode cube;

  private Glb(Scene scene, SiteFrame site) {
    root.putObject("asset").put("version", "2.0").put("generator", "Holloway");
    root.put("scene", 0);
    nodes = root.putArray("nodes");
    root.putArray("meshes");
    root.putArray("materials");
    bytes = new GlbBytes(root);
    ArrayNode top = top(scene, site);
    members(scene, top);
    glows(scene, top);
    tubes(scene, top);
    pins(scene, top);
    if (top.isEmpty()) {
      throw new IllegalArgumentException("nothing to write: the scene is empty");
    }
  }

  /** The same bytes for the same scene, in the frame of its own house. */
  public static byte[] of(Scene scene) {
    return of(scene, SiteFrame.OWN);
  }

  /** The same, in the frame of the site: the whole house hangs under one node that is turned. */
  public static byte[] of(Scene scene, SiteFrame site) {
    return new Glb(scene, site).bytes.file();
  }

  private ArrayNode top(Scene scene, SiteFrame site) {
    ArrayNode top =
        root.putArray("scenes").addObject().put("name", scene.house()).putArray("nodes");
    if (site.isOwn()) {
      return top;
    }
    top.add(nodes.size());
    ObjectNode house = nodes.addObject().put("name", "turned by " + site.turn().words());
    double c = site.turn().cos();
    double s = site.turn().sin();
    ArrayNode m = house.putArray("matrix");
    column(m, new Vec(c, 0, 0 - s), 0);
    column(m, new Vec(0, 1, 0), 0);
    column(m, new Vec(s, 0, c), 0);
    column(m, out(new Vec(site.east() / 1e6, site.north() / 1e6, 0)), 1);
    return house.putArray("children");
  }

  private void members(Scene scene, ArrayNode top) {
    Map<String, ArrayNode> groups = new TreeMap<>();
    Map<Integer, String> levels = new TreeMap<>();
    scene.levels().forEach(l -> levels.put(l.order(), l.name()));
    for (Scene.Solid s : scene.solids()) {
      if (!s.brick().isSolid()) {
        continue;
      }
      String name = s.layer().word() + ", " + levels.get(s.level());
      ArrayNode group = groups.computeIfAbsent(name, n -> group(n, top));
      Paint paint = Paint.of(s.layer());
      ObjectNode node = node(s.id(), s.words(), group).put("mesh", cube(paint));
      place(node, s.brick());
      ((ObjectNode) node.get("extras")).put("assumed", s.assumed());
    }
  }

  private void glows(Scene scene, ArrayNode top) {
    List<Scene.Space> lit =
        scene.spaces().stream().filter(g -> g.isLit() && g.brick().isSolid()).toList();
    ArrayNode group = lit.isEmpty() ? null : group("hollows used", top);
    for (Scene.Space g : lit) {
      ObjectNode node = node(g.id(), g.words(), group).put("mesh", cube(Paint.GLOW));
      place(node, g.brick());
      names(node, g.runs());
    }
  }

  private void tubes(Scene scene, ArrayNode top) {
    ArrayNode group = scene.tubes().isEmpty() ? null : group("runs", top);
    for (Scene.Tube t : scene.tubes()) {
      List<Vec> path = t.laid().packed().stream().map(Glb::out).toList();
      Mesh mesh = Mesh.tube(path, t.diameterMm() / 2 * METRE);
      if (!mesh.triangles().isEmpty()) {
        ObjectNode node = node(t.id(), t.words(), group);
        node.put("mesh", mesh(bytes.primitive(mesh), Paint.run(t.number() % Palette.RUNS.size())));
        ((ObjectNode) node.get("extras")).put("number", t.number());
      }
    }
  }

  private void pins(Scene scene, ArrayNode top) {
    ArrayNode group = scene.pins().isEmpty() ? null : group("holes", top);
    for (Scene.Pin p : scene.pins()) {
      Vec d = p.to().minus(p.from());
      Vec past = d.length() > 1e-6 ? d.unit().times(PAST) : new Vec(0, 0, PAST);
      List<Vec> axis = List.of(out(p.from().minus(past)), out(p.to().plus(past)));
      Mesh mesh = Mesh.tube(axis, p.diameterMm() / 2 * METRE);
      ObjectNode node = node(p.id(), p.words(), group);
      node.put("name", p.label() + " " + p.id());
      node.put("mesh", mesh(bytes.primitive(mesh), Paint.HOLE));
      ((ObjectNode) node.get("extras")).put("label", p.label());
      names(node, p.runs());
    }
  }

  private static void names(ObjectNode node, List<String> runs) {
    ArrayNode list = ((ObjectNode) node.get("extras")).putArray("runs");
    runs.forEach(list::add);
  }

  private ArrayNode group(String name, ArrayNode top) {
    top.add(nodes.size());
    return nodes.addObject().put("name", name).putArray("children");
  }

  private ObjectNode node(String id, String words, ArrayNode group) {
    group.add(nodes.size());
    ObjectNode node = nodes.addObject().put("name", id);
    node.putObject("extras").put("id", id).put("what", words);
    return node;
  }

  /** A cube of this paint; all share their corners. */
  private int cube(Paint paint) {
    if (cube == null) {
      cube = bytes.primitive(Mesh.cube());
    }
    return cubes.computeIfAbsent(paint.name(), n -> mesh(cube.deepCopy(), paint));
  }

  private int mesh(ObjectNode primitive, Paint paint) {
    ArrayNode materials = (ArrayNode) root.get("materials");
    int material = 0;
    while (material < materials.size()
        && !materials.get(material).get("name").asText().equals(paint.name())) {
      material++;
    }
    if (material == materials.size()) {
      materials.add(paint.material());
    }
    primitive.put("material", material);
    ArrayNode meshes = (ArrayNode) root.get("meshes");
    meshes.addObject().putArray("primitives").add(primitive);
    return meshes.size() - 1;
  }

  private static void place(ObjectNode node, Brick b) {
    ArrayNode m = node.putArray("matrix");
    for (Vec axis : List.of(b.a(), b.b(), b.c())) {
      column(m, out(axis), 0);
    }
    column(m, out(b.middle()), 1);
  }

  private static void column(ArrayNode m, Vec v, double last) {
    m.add(v.x()).add(v.y()).add(v.z()).add(last);
  }

  /** East stays x, up becomes y, south becomes z. */
  private static Vec out(Vec v) {
    return new Vec(v.x() * METRE, v.z() * METRE, 0 - v.y() * METRE);
  }
}
