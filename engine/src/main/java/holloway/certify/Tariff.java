package holloway.certify;

import holloway.plan.Certificate;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The shares of one part, as they are looked up on the way: by place, then work, then group. */
final class Tariff {
  /** By the word for the kind of place, then its id; null where nobody pays anything. */
  private final Map<String, Map<Integer, long[]>[]> places = new HashMap<>();

  private final int groups;

  /** By class of cables, then by hole. */
  private final Map<Integer, long[]> rent = new TreeMap<>();

  /** By own work of a hole, then by class of cables, what others lend to it. */
  private final Map<Integer, Map<Integer, Long>> lent = new TreeMap<>();

  /** By hole, then by class of cables, what each group pays for its room. */
  private final List<Map<Integer, long[]>> room = new ArrayList<>();

  /** The same by own work of a hole: for its room by the methods that need the work. */
  private final List<Map<Integer, long[]>> ownRoom = new ArrayList<>();

  Tariff(RouteGraph graph, int groups, boolean directed, List<Certificate.Share> shares) {
    this.groups = groups;
    places.put("node", slots(graph.nodes().size()));
    places.put("edge", slots(graph.edges().size()));
    places.put("hole", slots(graph.holes().size()));
    if (directed) {
      places.put("arc", slots(2 * graph.edges().size()));
      places.put("into", slots(2 * graph.edges().size()));
    }
    graph.holes().forEach(h -> room.add(new TreeMap<>()));
    graph.works().forEach(w -> ownRoom.add(new TreeMap<>()));
    for (Certificate.Share s : shares) {
      if (s.place().equals(Certificate.Share.LIFT)) {
        lent.computeIfAbsent(s.at(), w -> new TreeMap<>())
            .merge(s.group(), s.units(), Math::addExact);
      } else if (s.place().equals(Certificate.Share.RENT)) {
        addRent(s, directed);
      } else if (s.place().equals(Certificate.Share.ROOM)) {
        addRoom(s, directed, room);
      } else if (s.place().equals(Certificate.Share.OWN_ROOM)) {
        addRoom(s, directed, ownRoom);
      } else {
        add(s, graph.works().size());
      }
    }
  }

  private void addRent(Certificate.Share s, boolean directed) {
    boolean known = s.at() >= 0 && s.at() < room.size() && s.work() >= 0;
    if (directed || !known || s.units() < 0) {
      throw new Unproven("a rent of %d at hole %d is none".formatted(s.units(), s.at()));
    }
    long[] byHole = rent.computeIfAbsent(s.work(), c -> new long[room.size()]);
    byHole[s.at()] = Math.addExact(byHole[s.at()], s.units());
  }

  private void addRoom(Certificate.Share s, boolean directed, List<Map<Integer, long[]>> room) {
    boolean known = s.at() >= 0 && s.at() < room.size() && s.group() >= 0 && s.group() < groups;
    if (directed || !known || s.work() < 0 || s.units() < 0) {
      throw new Unproven(
          "it gives group %d %d units of the %s at %d, and there is no such thing"
              .formatted(s.group(), s.units(), s.place(), s.at()));
    }
    long[] byGroup = room.get(s.at()).computeIfAbsent(s.work(), c -> new long[groups]);
    byGroup[s.group()] = Math.addExact(byGroup[s.group()], s.units());
  }

  /** By class of cables what each group pays for the room of a hole. */
  Map<Integer, long[]> room(int hole) {
    return room.get(hole);
  }

  /** By class of cables what each group pays for the room by the methods with an own work. */
  Map<Integer, long[]> ownRoom(int work) {
    return ownRoom.get(work);
  }

  /** What is lent to the own work of a hole, or to a class of cables that pass by it. */
  long lent(int work, int without) {
    return lent.getOrDefault(work, Map.of()).getOrDefault(without, 0L);
  }

  /** What a group pays for the room of a hole, whichever classes it belongs to. */
  long room(int hole, int group) {
    return sum(room.get(hole), group);
  }

  /** The same by one method, given its works. */
  long ownRoom(int[] method, int group) {
    long sum = 0;
    for (int work : Arrays.stream(method).distinct().toArray()) {
      sum = Math.addExact(sum, sum(ownRoom.get(work), group));
    }
    return sum;
  }

  private static long sum(Map<Integer, long[]> byClass, int group) {
    long sum = 0;
    for (long[] byGroup : byClass.values()) {
      sum = Math.addExact(sum, byGroup[group]);
    }
    return sum;
  }

  /**
   * What the shares of one work of each method of a hole, or of its room, may be over its price.
   */
  long rent(int hole, int without) {
    return rent.containsKey(without) ? rent.get(without)[hole] : 0;
  }

  /** All of them, which the shares have to prove besides. */
  long rents() {
    long sum = 0;
    for (long[] byHole : rent.values()) {
      for (long r : byHole) {
        sum = Math.addExact(sum, r);
      }
    }
    return sum;
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Map<Integer, long[]>[] slots(int count) {
    return new Map[count];
  }

  private void add(Certificate.Share s, int works) {
    Map<Integer, long[]>[] kind = places.get(s.place());
    boolean known =
        kind != null && s.at() >= 0 && s.at() < kind.length && s.work() >= 0 && s.work() < works;
    if (!known || s.group() < 0 || s.group() >= groups) {
      throw new Unproven(
          "it gives group %d a share of work %d at %s %d, and the house has no such thing"
              .formatted(s.group(), s.work(), s.place(), s.at()));
    }
    if (s.units() < 0) {
      throw new Unproven(
          "the share of work %d at %s %d is below nothing".formatted(s.work(), s.place(), s.at()));
    }
    if (kind[s.at()] == null) {
      kind[s.at()] = new HashMap<>();
    }
    long[] byGroup = kind[s.at()].computeIfAbsent(s.work(), w -> new long[groups]);
    byGroup[s.group()] = Math.addExact(byGroup[s.group()], s.units());
  }

  /** What is shared out at a place by work, or null. */
  Map<Integer, long[]> at(String kind, int id) {
    Map<Integer, long[]>[] slots = places.get(kind);
    return slots == null ? null : slots[id];
  }
}
