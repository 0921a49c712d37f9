package holloway.gl;

import static org.lwjgl.opengl.GL33C.*;

import holloway.look.Bodies;
import holloway.look.Dash;
import holloway.look.Mark;
import holloway.look.Pane;
import holloway.look.Sheet;
import holloway.look.Solids;
import holloway.look.Theme;
import holloway.look.Triangles;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.joml.Vector3f;
import org.joml.Vector4f;
import org.joml.Vector4fc;

/**
 * Draws sheets with the context that is current. What stands in the house is sent to the card once
 * for each {@link Bodies} and kept until another set is drawn.
 */
final class Painter implements AutoCloseable {
  private static final Vector4fc KEEP_ALL = new Vector4f(0, 0, 0, 1);
  private static final Vector3f KEY = new Vector3f(-0.55f, -0.75f, 0.36f).normalize();
  private static final float SEEN_THROUGH = 0.34f;

  private final Letters letters = new Letters();
  private final Program box = new Program("box.vert", "solid.frag");
  private final Program glow = new Program("box.vert", "glow.frag");
  private final Program veil = new Program("box.vert", "veil.frag");
  private final Program sheet = new Program("sheet.vert", "sheet.frag");
  private final Program tube = new Program("tube.vert", "tube.frag");
  private final Program ground = new Program("ground.vert", "ground.frag");
  private final Program flat = new Program("flat.vert", "flat.frag");
  private final int cube = Mesh.cube();
  private final int nothing = glGenVertexArrays();
  private final Mesh marks = Mesh.ofCorners(FlatMesh.PARTS);
  private Map<Bodies, Loaded> loaded = new IdentityHashMap<>();

  /** One set of bodies on the card. */
  private final class Loaded implements AutoCloseable {
    final Mesh solids = boxes();
    final Mesh veils = boxes();
    final Mesh glows = boxes();
    final Mesh sheets = faces();
    final Mesh veilSheets = faces();
    final Mesh glowSheets = faces();
    final Mesh tubes = Mesh.ofCorners(TubeMesh.PARTS);

    Loaded(Bodies b) {
      fill(solids, b.solids);
      fill(veils, b.veils);
      fill(glows, b.glows);
      fill(sheets, b.sheets);
      fill(veilSheets, b.veilSheets);
      fill(glowSheets, b.glowSheets);
      tubes.fill(TubeMesh.of(b.tubes));
    }

    private Mesh boxes() {
      return Mesh.ofCubes(cube, 3, 3, 3, 3, 4);
    }

    private static Mesh faces() {
      return Mesh.ofCorners(3, 3, 4);
    }

    private static void fill(Mesh mesh, Solids s) {
      mesh.fill(s.packed());
    }

    private static void fill(Mesh mesh, Triangles t) {
      mesh.fill(t.packed());
    }

    @Override
    public void close() {
      for (Mesh m : new Mesh[] {solids, veils, glows, sheets, veilSheets, glowSheets, tubes}) {
        m.close();
      }
    }
  }

  Letters letters() {
    return letters;
  }

  /** Draws all of a sheet into the frame that is bound, which has the sheet's size. */
  void draw(Sheet s) {
    letters.tidy();
    keepOnly(s);
    glDisable(GL_SCISSOR_TEST);
    glViewport(0, 0, s.width(), s.height());
    glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
    drawGround(s.theme());
    for (Pane p : s.panes()) {
      drawPane(p, s);
    }
    glDisable(GL_SCISSOR_TEST);
    glViewport(0, 0, s.width(), s.height());
    drawMarks(s);
  }

  private void keepOnly(Sheet s) {
    Map<Bodies, Loaded> now = new IdentityHashMap<>();
    for (Pane p : s.panes()) {
      Loaded before = loaded.remove(p.bodies());
      if (!now.containsKey(p.bodies())) {
        now.put(p.bodies(), before == null ? new Loaded(p.bodies()) : before);
      }
    }
    loaded.values().forEach(Loaded::close);
    loaded = now;
  }

  private void drawGround(Theme t) {
    glDisable(GL_DEPTH_TEST);
    glDisable(GL_BLEND);
    glDisable(GL_CULL_FACE);
    ground.use().colour("high", t.ground()).colour("low", t.groundLow());
    glBindVertexArray(nothing);
    glDrawArrays(GL_TRIANGLES, 0, 3);
  }

  private void drawPane(Pane p, Sheet s) {
    int below = s.height() - p.y() - p.height();
    glViewport(p.x(), below, p.width(), p.height());
    glEnable(GL_SCISSOR_TEST);
    glScissor(p.x(), below, p.width(), p.height());
    glEnable(GL_CLIP_DISTANCE0);
    glEnable(GL_CLIP_DISTANCE0 + 1);
    Loaded l = loaded.get(p.bodies());
    Theme t = s.theme();
    drawSolids(p, t, l);
    drawGlows(p, t, l);
    drawTubes(p, t, l);
    drawVeils(p, l);
    glDisable(GL_CLIP_DISTANCE0);
    glDisable(GL_CLIP_DISTANCE0 + 1);
  }

  private static Program eye(Program program, Pane p) {
    return eye(program, p, p.cuts());
  }

  private static Program eye(Program program, Pane p, List<Vector4fc> cuts) {
    program.use().set("view", p.view()).set("projection", p.projection());
    for (int i = 0; i < 2; i++) {
      program.set("cuts", i, i < cuts.size() ? cuts.get(i) : KEEP_ALL);
    }
    // Seen from below, a floor is lit from below: nobody looks at the dark.
    float up = p.view().m22() < -0.7f ? -1 : 1;
    return program.set("up", up).set("key", KEY.x, KEY.y, KEY.z * up);
  }

  private void drawSolids(Pane p, Theme t, Loaded l) {
    glEnable(GL_DEPTH_TEST);
    glDepthFunc(GL_LEQUAL);
    glDepthMask(true);
    glDisable(GL_BLEND);
    glDisable(GL_CULL_FACE);
    eye(box, p).colour("cutColour", t.cut()).set("cutShare", p.cuts().isEmpty() ? 0 : 0.55f);
    l.solids.draw();
    eye(sheet, p).set("additive", 0).set("lit", 1);
    l.sheets.draw();
  }

  private void drawGlows(Pane p, Theme t, Loaded l) {
    glEnable(GL_BLEND);
    glDepthMask(false);
    float additive = t.additive() ? 1 : 0;
    glBlendFunc(
        t.additive() ? GL_ONE : GL_SRC_ALPHA, t.additive() ? GL_ONE : GL_ONE_MINUS_SRC_ALPHA);
    // The far sides, so that a cut one is lit too; they touch the timber round them.
    glEnable(GL_CULL_FACE);
    glCullFace(GL_FRONT);
    glEnable(GL_POLYGON_OFFSET_FILL);
    glPolygonOffset(-2, -4);
    eye(glow, p).set("additive", additive);
    l.glows.draw();
    glDisable(GL_POLYGON_OFFSET_FILL);
    glDisable(GL_CULL_FACE);
    eye(sheet, p).set("additive", additive).set("lit", 0);
    l.glowSheets.draw();
  }

  private void drawTubes(Pane p, Theme t, Loaded l) {
    eye(tube, p, p.tubeCuts())
        .set("paneHeight", p.height())
        .set("leastPixels", p.leastPixels())
        .colour("rim", Theme.RIM)
        .set("rimShare", (float) Theme.RIM_SHARE)
        .colour("gap", t.additive() ? 0x0B0E14 : 0xFFFFFF);
    Dash[] all = Dash.values();
    for (int i = 0; i < all.length; i++) {
      float[] d = all[i].parts();
      tube.set("dashes", i, new Vector4f(d[0], d[1], d[2], d[3]));
    }
    glEnable(GL_CULL_FACE);
    glCullFace(GL_BACK);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    // First what members hide, faintly, so that no run is lost behind a stud.
    glDepthFunc(GL_GREATER);
    tube.set("opacity", SEEN_THROUGH);
    l.tubes.draw();
    glDepthFunc(GL_LEQUAL);
    glDepthMask(true);
    tube.set("opacity", 1);
    l.tubes.draw();
    glDisable(GL_CULL_FACE);
  }

  private void drawVeils(Pane p, Loaded l) {
    glDepthMask(false);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    glEnable(GL_CULL_FACE);
    glCullFace(GL_BACK);
    eye(veil, p);
    l.veils.draw();
    glDisable(GL_CULL_FACE);
    eye(sheet, p).set("additive", 0).set("lit", 1);
    l.veilSheets.draw();
    glDepthMask(true);
  }

  private void drawMarks(Sheet s) {
    over(s.over(), s.width(), s.height());
  }

  /** Draws flat marks into a frame of a size. */
  void over(List<Mark> list, int width, int height) {
    float[] triangles = FlatMesh.of(list, letters);
    flat(width, height);
    marks.fill(triangles).draw();
  }

  /** Gets ready for flat triangles in pixels, with letters. */
  void flat(int width, int height) {
    glDisable(GL_DEPTH_TEST);
    glDisable(GL_CULL_FACE);
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    flat.use().set("size", width, height);
    letters.bind();
  }

  @Override
  public void close() {
    loaded.values().forEach(Loaded::close);
    for (Program p : new Program[] {box, glow, veil, sheet, tube, ground, flat}) {
      p.close();
    }
    marks.close();
    glDeleteBuffers(cube);
    glDeleteVertexArrays(nothing);
    letters.close();
  }
}
