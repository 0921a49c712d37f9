package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.units.Length;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs come out of outlets and links, with ids that stay the same. */
class RunsTest {
  @TempDir Path dir;

  private static List<String> ids(Request r) {
    return r.runs().stream().map(Run::id).toList();
  }

  @Test
  void oneRunACableCountedByKindThenTheSpares() throws IOException {
    Request r =
        new Written(dir)
            .with("cables: [cat6]", "cables: [cat6, om4, cat6], spare: 2")
            .sound()
            .request();
    assertEquals(
        List.of("desk/cat6-1", "desk/cat6-2", "desk/om4-1", "desk/spare-1", "desk/spare-2"),
        ids(r));
    Run spare = r.runs().get(3);
    assertTrue(spare.spare());
    assertEquals("cat6", spare.cable());
    assertEquals("cabinet", spare.from());
    assertEquals("desk", spare.to());
  }

  @Test
  void aRunMayHaveANameAndALinkJoinsTwoOutlets() throws IOException {
    Request r =
        new Written(dir)
            .with("cables: [cat6]", "cables: [{ kind: cat6, name: uplink }]")
            .plus("  - { name: nook, in: kitchen, wall: north, from: west 3 ft }\n")
            .plus("links:\n  - { from: desk, to: nook, cable: om4 }\n")
            .plus("  - { from: cabinet, to: nook, cable: cat6, name: nook line }\n")
            .sound()
            .request();
    assertEquals(List.of("desk to nook/om4-1", "nook line", "uplink"), ids(r));
  }

  @Test
  void alternativesRangesCeilingsAndTheOutside() throws IOException {
    Request r =
        new Written(dir)
            .with(
                "height: 16 in",
                "to: 5 ft, height: 16 in, or: [{ in: kitchen, ceiling: [west 1 m, north 1 m] },"
                    + " { outside: garage south, from: east 2 ft, height: 4 ft }]")
            .sound()
            .request();
    Outlet o = r.getOutlet("desk");
    assertEquals(3, o.spots().size());
    var wall = assertInstanceOf(Spot.OnWall.class, o.spots().get(0));
    assertEquals(Optional.of(Length.feet(5)), wall.upTo());
    assertEquals(Length.feet(3), wall.at().along().distance().value());
    assertInstanceOf(Spot.OnCeiling.class, o.spots().get(1));
    assertInstanceOf(Spot.Outside.class, o.spots().get(2));
  }

  @Test
  void feedAndPower() throws IOException {
    Outlet o =
        new Written(dir)
            .with("cables: [cat6]", "cables: [outdoor-fibre], feed: yes, power: class 4")
            .sound()
            .request()
            .getOutlet("desk");
    assertTrue(o.feed());
    assertEquals("class 4", o.power());
  }

  @Test
  void faults() throws IOException {
    new Written(dir)
        .plus("links:\n  - { from: desk, to: dask, cable: om4 }\n")
        .assertProblemAt("dask", "no outlet 'dask'", "'desk'");
    new Written(dir)
        .plus("links:\n  - { from: desk, to: desk, cable: om4 }\n")
        .assertProblemAt("desk, cable: om4", "two different ends");
    new Written(dir)
        .plus("wishes: { through: { desk/cat6-2: attic } }\n")
        .assertProblemAt("desk/cat6-2", "no run 'desk/cat6-2'", "'desk/cat6-1'");
  }

  @Test
  void aRunMayBePinned() throws IOException {
    Request r =
        new Written(dir).plus("wishes: { through: { desk/cat6-1: attic } }\n").sound().request();
    assertEquals(Optional.of("attic"), r.runs().get(0).through());
  }
}
