package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Roofs that cannot be built, and hollows that lead nowhere. */
class RoofFaultsTest {
  @TempDir Path dir;

  @Test
  void ridgesSidesAndPitches() throws IOException {
    new Written(dir)
        .with(" ridge: east-west,", "")
        .assertProblemAt("{ over", "a gable roof needs a ridge");
    new Written(dir)
        .with(" pitch: 6/12,", "")
        .assertProblemAt("{ over", "a gable roof needs a pitch");
    new Written(dir)
        .with("shape: gable, ridge: east-west", "shape: shed")
        .assertProblemAt("{ over", "needs its low side");
    new Written(dir)
        .with("shape: gable", "shape: shed, low-side: west")
        .assertProblemAt("east-west, pitch", "a shed roof has no ridge");
    new Written(dir)
        .with("shape: gable", "shape: gable, low-side: west")
        .assertProblemAt("west, ridge", "only a shed roof");
    new Written(dir).with("6/12", "120/12").assertProblemAt("120/12", "no roof is as steep");
    new Written(dir).with("6/12", "35 deg").sound();
    new Written(dir).with("6/12", "35").assertProblemAt("35,", "6/12 or 35 deg");
    new Written(dir).with("over: upper", "over: []").assertProblemAt("[]", "lies over nothing");
  }

  @Test
  void insulation() throws IOException {
    for (String good : new String[] {"12 in loose", "none", "200 mm", "8 in unfaced-batt"}) {
      new Written(dir).with("frame: trusses", "frame: trusses, insulation: " + good).sound();
    }
    new Written(dir)
        .with("frame: trusses", "frame: trusses, insulation: 12 in lose")
        .assertProblemAt("12 in lose", "did you mean 'loose'");
    new Written(dir)
        .with("frame: trusses", "frame: trusses, insulation: 12 loose")
        .assertProblemAt("12 loose", "needs a unit");
  }

  @Test
  void twoRoofsOfOneName() throws IOException {
    new Written(dir)
        .with("hollows:", "  - { over: upper, shape: flat, frame: rafters }\nhollows:")
        .assertProblemAt("upper, shape: flat", "the roof 'roof over upper' is already there");
  }

  @Test
  void joins() throws IOException {
    new Written(dir)
        .with("frame: trusses", "frame: trusses, joins: [{ to: wing, size: 2 ft x 3 ft }]")
        .assertProblemAt("wing", "there is no roof 'wing' to join");
    new Written(dir)
        .with(
            "frame: trusses",
            "name: main, frame: trusses, joins: [{ to: main, size: 2 ft x 3 ft }]")
        .assertProblemAt("main, size", "a roof does not join itself");
    new Written(dir)
        .with("frame: trusses", "frame: trusses, joins: [{ to: wing }]")
        .assertProblemAt("{ to: wing", "lacks 'size:'");
    new Written(dir)
        .with("frame: trusses", "frame: trusses, joins: [{ to: {}, size: 2 ft x 3 ft }]")
        .assertProblemAt("{}, size", "");
    String both = "frame: trusses, joins: [{ to: wing, shut: yes, size: 2 ft x 3 ft }]";
    String said = new Written(dir).with("frame: trusses", both).problems().toString();
    assertTrue(said.contains("either 'shut: yes', or an opening"), said);
  }

  @Test
  void valleys() throws IOException {
    new Written(dir)
        .with("frame: trusses", "frame: trusses, joins: [{ to: wing, valley: open }]")
        .assertProblemAt("open }", "cut-through, laid-over");
    valley("valley: cut-through, size: 2 ft x 3 ft", "a valley that was cut through has no size");
    valley("valley: laid-over, shut: yes", "laid-over is shut");
    valley("valley: laid-over, from: south 2 ft", "not how large the hole is");
  }

  private void valley(String words, String says) throws IOException {
    String join = "frame: trusses, joins: [{ to: wing, " + words + " }]";
    String said = new Written(dir).with("frame: trusses", join).problems().toString();
    assertTrue(said.contains(says), said);
  }

  @Test
  void hatches() throws IOException {
    new Written(dir)
        .with("frame: trusses", "frame: trusses, hatch: { in: office, at: [west 4 ft, south 9 m] }")
        .assertProblemAt("south 9 m", "this hatch lies beyond");
    new Written(dir)
        .with("frame: trusses", "frame: trusses, hatch: { in: office, at: middle }")
        .assertProblemAt("middle", "a list [ , ] of two");
  }

  @Test
  void skylights() throws IOException {
    new Written(dir)
        .with(
            "frame: trusses",
            "frame: trusses, skylights: [{ in: office, at: [west 4 ft, south 9 m], size: 2 ft x 2 ft }]")
        .assertProblemAt("south 9 m", "this skylight lies beyond");
    new Written(dir)
        .with(
            "frame: trusses",
            "frame: trusses, skylights: [{ in: office, at: [west 4 ft, south 4 ft] }]")
        .assertProblemAt("{ in: office, at: [west 4 ft", "lacks 'size:'");
    new Written(dir)
        .with(
            "frame: trusses",
            "frame: trusses, skylights: [{ in: garage, at: [west 4 ft, south 4 ft], size: 2 ft x 2 ft }]")
        .assertProblemAt("garage, at: [west 4 ft", "does not lie over 'garage'");
  }

  private void dormer(String with, String part, String says) throws IOException {
    new Written(dir)
        .with("frame: trusses", with.replace("HIGH", "width: 6 ft, back: 2 ft, height: 5 ft"))
        .assertProblemAt(part, says);
  }

  @Test
  void arches() throws IOException {
    String plain = "shape: gable, ridge: east-west, pitch: 6/12";
    String arch = "shape: arched, ridge: east-west";
    new Written(dir).with(plain, arch + ", rise: 5 ft").sound();
    new Written(dir).with(plain, arch).assertProblemAt("{ over:", "needs its rise");
    new Written(dir)
        .with(plain, arch + ", rise: 5 ft, pitch: 6/12")
        .assertProblemAt("6/12", "tape its 'rise'");
    new Written(dir)
        .with(plain, plain + ", rise: 5 ft")
        .assertProblemAt("5 ft", "only an arched roof");
    new Written(dir)
        .with(plain, "shape: arched, rise: 5 ft")
        .assertProblemAt("{ over:", "needs a ridge");
  }

  @Test
  void dormers() throws IOException {
    dormer(
        "frame: trusses, dormers: [{ side: south, shape: shed, from: west 9 ft, HIGH }]",
        "{ side: south",
        "has trusses: a dormer only stands on them");
    dormer(
        "frame: rafters, dormers: [{ side: east, shape: shed, from: south 9 ft, HIGH }]",
        "{ side: east",
        "does not come down on its east side");
    dormer(
        "frame: rafters, dormers: [{ side: south, shape: shed, from: north 9 ft, HIGH }]",
        "{ side: south",
        "the south eave runs east-west: tape along it");
    dormer(
        "frame: rafters, dormers: [{ side: south, shape: hip, from: west 9 ft, HIGH }]",
        "hip",
        "gable");
    dormer(
        "frame: rafters, dormers: [{ side: south, shape: shed, width: 6 ft, from: west 9 ft, back: 2 ft }]",
        "{ side: south",
        "lacks 'height:'");
  }

  @Test
  void hollows() throws IOException {
    new Written(dir)
        .with("{ chase: shaft", "{ tube: shaft")
        .assertProblemAt("{ tube", "an item of 'hollows' is not written like this");
    new Written(dir)
        .with("to: attic", "to: attic, floors: { uper: closed }")
        .assertProblemAt("uper: closed", "no level 'uper'", "'upper'");
    new Written(dir)
        .with("to: attic", "to: attic, floors: { upper: shut }")
        .assertProblemAt("shut", "open, gap, closed, unknown");
    new Written(dir)
        .with("to: attic", "to: attic, contents: [water]")
        .assertProblemAt("water", "pipe, vent, duct, wire, flue");
    new Written(dir)
        .with("to: attic", "to: attic, along: west 2 ft")
        .assertProblemAt("west 2 ft", "runs north-south");
  }

  @Test
  void crawlspaces() throws IOException {
    new Written(dir)
        .with("run: east-west }", "run: east-west, over: { crawlspace: { access: {} } } }")
        .assertProblemAt("{} }", "one of floor-hatch and outside-door");
    new Written(dir)
        .with("run: east-west }", "run: east-west, from: west 7 in }")
        .assertProblemAt("west 7 in", "counted from the south or north edge");
    new Written(dir)
        .with("{ joists: 2x10, run: east-west }", "{ joists: 2x10 }")
        .assertProblemAt("{ joists: 2x10 }", "lacks 'run:'", "look in the attic");
  }
}
