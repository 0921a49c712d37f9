package holloway.check;

import holloway.framing.Member;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** All members in a uniform grid of cells, so that a stretch asks only what is near it. */
final class SolidGrid {
  private static final double CELL = 600;

  /**
   * Longer stretches are asked in pieces: the box around a slanted one would be most of a house.
   */
  private static final double PIECE = 1200;

  private final List<Member> members;
  private final List<Solid> solids;
  private final Map<Long, List<Integer>> cells = new HashMap<>();

  SolidGrid(List<Member> members) {
    this.members = members;
    this.solids = members.stream().map(Solid::of).toList();
    for (int i = 0; i < solids.size(); i++) {
      double[] b = solids.get(i).bounds();
      for (long key : keys(b, 0)) {
        cells.computeIfAbsent(key, k -> new ArrayList<>()).add(i);
      }
    }
  }

  Member member(int index) {
    return members.get(index);
  }

  Solid solid(int index) {
    return solids.get(index);
  }

  /** Indices, ascending, of members that may lie within {@code reach} of the stretch. */
  List<Integer> near(Span span, double reach) {
    TreeSet<Integer> found = new TreeSet<>();
    int pieces = (int) Math.max(1, Math.ceil(span.length() / PIECE));
    for (int i = 0; i < pieces; i++) {
      Mm a = span.at(i / (double) pieces);
      Mm b = span.at((i + 1) / (double) pieces);
      double[] box = {
        Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.min(a.z(), b.z()),
        Math.max(a.x(), b.x()), Math.max(a.y(), b.y()), Math.max(a.z(), b.z())
      };
      for (long key : keys(box, reach)) {
        found.addAll(cells.getOrDefault(key, List.of()));
      }
    }
    return List.copyOf(found);
  }

  private static List<Long> keys(double[] b, double reach) {
    List<Long> out = new ArrayList<>();
    for (long x = cell(b[0] - reach); x <= cell(b[3] + reach); x++) {
      for (long y = cell(b[1] - reach); y <= cell(b[4] + reach); y++) {
        for (long z = cell(b[2] - reach); z <= cell(b[5] + reach); z++) {
          out.add((x + 50_000) * 10_000_000_000L + (y + 50_000) * 100_000L + z + 50_000);
        }
      }
    }
    return out;
  }

  private static long cell(double mm) {
    return (long) Math.floor(mm / CELL);
  }
}
