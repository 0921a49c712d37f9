package holloway.housefile;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Layers of a lining as a newcomer writes them first. */
class LiningFaultsTest {
  @TempDir Path dir;

  private Written lined(String lining) {
    return new Written(dir).with("walls:", "walls:\n  - { side: kitchen west, " + lining + " }");
  }

  @Test
  void layersAreRead() throws IOException {
    lined("lining: [board 1/2 in, tile 10 mm]").sound();
  }

  @Test
  void eachLayerSaysWhatAndHowThick() throws IOException {
    lined("lining: [board]").assertProblemAt("board]", "how thick");
    lined("lining: [bord 1/2 in]").assertProblemAt("bord 1/2 in", "did you mean 'board'");
    lined("lining: [board 12 in]").assertProblemAt("board 12 in", "too long");
    lined("lining: board 1/2 in").assertProblemAt("board 1/2 in", "a list");
    lined("lining: []").assertProblemAt("[]", "0 items");
  }

  @Test
  void aCeilingHasLayersToo() throws IOException {
    ceiling("[board 1/2 in, plaster 3 mm]").sound();
    ceiling("[board]").assertProblemAt("board]", "how thick");
    ceiling("board 1/2 in").assertProblemAt("board 1/2 in", "a list");
    ceiling("[vaulted 1/2 in]").assertProblemAt("vaulted 1/2 in", "no such lining");
    ceiling("[]").assertProblemAt("[]", "0 items");
  }

  private Written ceiling(String said) {
    return new Written(dir)
        .with("level: ground, size:", "level: ground, ceiling: " + said + ", size:");
  }

  @Test
  void strapsHaveADepthAndCarryALining() throws IOException {
    ceiling("board, straps: { depth: 3/4 in }").sound();
    ceiling("board, straps: 3/4 in").assertProblemAt("3/4 in,", "a map");
    ceiling("board, straps: { every: 16 in }").assertProblemAt("{ every", "depth");
    ceiling("board, straps: { depth: 3 in }").assertProblemAt("3 in }", "too long");
    ceiling("open, straps: { depth: 3/4 in }").assertProblemAt("{ depth", "no lining");
    new Written(dir)
        .with(
            "level: upper, size:",
            "level: upper, ceiling: vaulted, straps: { depth: 3/4 in }, size:")
        .with("frame: trusses", "frame: rafters")
        .assertProblemAt("{ depth", "rafters");
  }

  @Test
  void battensHaveADepthAndRunSomehow() throws IOException {
    lined("battens: { depth: 1-1/2 in, run: level, first: 8 in, over: plaster 3/8 in }").sound();
    lined("battens: { depth: 1-1/2 in, run: upright, every: 24 in }").sound();
    lined("battens: 1-1/2 in").assertProblemAt("1-1/2 in }", "a map");
    lined("battens: { run: level }").assertProblemAt("{ run", "depth");
    lined("battens: { depth: 1-1/2 in }").assertProblemAt("{ depth", "run");
    lined("battens: { depth: 1 ft, run: level }").assertProblemAt("1 ft, run", "too long");
    lined("battens: { depth: 2 in, run: levl }").assertProblemAt("levl", "did you mean 'level'");
    lined("battens: { depth: 2 in, run: upright, first: 8 in }")
        .assertProblemAt("8 in }", "is said of level ones");
    lined("battens: { depth: 2 in, run: level, over: boards 1 in }")
        .assertProblemAt("boards 1 in", "no such lining");
    lined("kind: masonry, battens: { depth: 2 in, run: level }")
        .assertProblemAt("{ depth", "kind: furred");
    lined("kind: glazed, battens: { depth: 2 in, run: level }")
        .assertProblemAt("{ depth", "glass has no battens");
    lined("battens: { depth: 2 in, run: level }")
        .with("kitchen: { level: ground,", "kitchen: { level: ground, finish: open,")
        .assertProblemAt("2 in, run", "battens carry a lining");
  }

  @Test
  void onlyFramedWallsHaveRows() throws IOException {
    lined("rows: 2, thickness: 12 in").sound();
    lined("rows: 3").assertProblemAt("3 }", "1 to 2");
    lined("kind: masonry, rows: 2").assertProblemAt("2 }\n", "only a framed wall");
  }

  @Test
  void glassHasNone() throws IOException {
    lined("kind: glazed, lining: [board 1/2 in]").assertProblemAt("[board", "no lining");
  }

  private Written outer(String wall) {
    return new Written(dir).with("walls:", "walls:\n  - { side: kitchen west, " + wall + " }");
  }

  @Test
  void aCavityWallIsAnOuterOneOfTwoLeaves() throws IOException {
    outer("kind: cavity, inside: furred, void: 45 mm, thickness: 330 mm").sound();
    outer("kind: cavity, leaves: [4 in, 3 in, 4 in], thickness: 12 in").sound();
    outer("kind: cavity, leaves: [4 in, 3 in, 4 in], thickness: 10 in")
        .assertProblemAt("[4 in", "add up to 279 mm, the whole wall is said to be 254 mm thick");
    outer("kind: cavity, leaves: [4 in, 3 in]").assertProblemAt("[4 in", "3");
    outer("kind: masonry, inside: dabbed").assertProblemAt("dabbed }", "is said of a cavity wall");
    outer("kind: masonry, leaves: [4 in, 3 in, 4 in]").assertProblemAt("[4 in", "of a cavity wall");
    outer("kind: cavity, void: 30 mm").assertProblemAt("30 mm", "kind: furred");
    new Written(dir)
        .with("studs: 2x6, separation: garage", "kind: cavity")
        .assertProblemAt("cavity", "a cavity wall is an outer one");
  }
}
