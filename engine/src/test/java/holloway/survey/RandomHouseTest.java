package holloway.survey;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static holloway.support.HouseBuilder.in;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Interval;
import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Side;
import holloway.house.Where;
import holloway.support.HouseBuilder;
import holloway.units.Length;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Whatever the house, framings never share space and behind every face stands a wall. */
class RandomHouseTest {
  /** A row of rooms along a corridor and another row over it, sizes at random. */
  static HouseBuilder random(long seed) {
    Random r = new Random(seed);
    HouseBuilder b = house().slab("ground", ft(8)).first("hall", "ground", ft(30), ft(4));
    String south = "hall";
    for (int row = 0; row < 2; row++) {
      Side out = row == 0 ? Side.NORTH : Side.SOUTH;
      String last = row + "-0";
      b.beside(last, size(r), size(r), out, "hall", Side.WEST);
      int rooms = 1 + r.nextInt(3);
      for (int i = 1; i <= rooms; i++) {
        String name = row + "-" + i;
        b.beside(name, size(r), size(r), Side.EAST, last, out.opposite());
        last = name;
      }
      south = last;
    }
    return b.beside("end", size(r), size(r), Side.EAST, south, Side.NORTH);
  }

  private static Length size(Random r) {
    return in(60 + r.nextInt(40));
  }

  @Test
  void framingsNeverShareSpace() {
    for (long seed = 0; seed < 25; seed++) {
      List<Wall> walls = Survey.of(random(seed).build()).value().walls();
      for (int i = 0; i < walls.size(); i++) {
        for (int j = i + 1; j < walls.size(); j++) {
          double shared = plan(walls.get(i)).intersection(plan(walls.get(j))).getArea();
          assertEquals(
              0,
              shared,
              1e-3,
              "seed %d: %s and %s".formatted(seed, walls.get(i).id(), walls.get(j).id()));
        }
      }
    }
  }

  @Test
  void framingNeverStandsInARoom() {
    for (long seed = 0; seed < 25; seed++) {
      Placed p = Survey.of(random(seed).build()).value();
      for (Wall w : p.walls()) {
        for (PlacedRoom r : p.rooms()) {
          double shared = plan(w).intersection(r.outline().toJts()).getArea();
          assertEquals(0, shared, 1e-3, "seed %d: %s in %s".formatted(seed, w.id(), r.name()));
        }
      }
    }
  }

  @Test
  void behindEverySpotOfEveryFaceStandsAWall() {
    for (long seed = 0; seed < 25; seed++) {
      Placed p = Survey.of(random(seed).build()).value();
      long seed2 = seed;
      for (PlacedRoom r : p.rooms()) {
        for (Side side : Side.values()) {
          Placed.Segment f = p.listFaces(r.name(), side).get(0);
          long length =
              side.runsEastWest() ? f.end().x() - f.start().x() : f.end().y() - f.start().y();
          Side end = side.runsEastWest() ? Side.WEST : Side.SOUTH;
          for (int k = 1; k < 12; k++) {
            Along along = new Along(end, Fact.measured(new Length(length * k / 12), Where.NOWHERE));
            FaceRef face = new FaceRef(r.name(), side, 1, Where.NOWHERE);
            OnWall spot =
                p.findSpot(face, along, 0)
                    .orElseThrow(() -> new AssertionError("seed " + seed2 + " no wall " + face));
            assertTrue(
                new Interval(0, spot.wall().length()).contains(spot.s()),
                "seed " + seed + " " + face + " " + k);
          }
        }
      }
    }
  }

  @Test
  void idsAreUniqueAndButtingWallsExist() {
    for (long seed = 0; seed < 25; seed++) {
      Placed p = Survey.of(random(seed).build()).value();
      assertEquals(p.walls().size(), p.walls().stream().map(Wall::id).distinct().count());
      for (Wall w : p.walls()) {
        for (Wall.Junction j : w.junctions()) {
          assertTrue(p.walls().stream().anyMatch(o -> o.id().equals(j.other())));
        }
      }
    }
  }

  private static Polygon plan(Wall w) {
    Interval s = new Interval(0, w.length());
    return Framed.plan(w.frame(), s, w.core());
  }
}
