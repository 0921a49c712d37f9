package holloway.survey;

import holloway.house.House;
import holloway.house.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Which levels stand over one another, and so make one part of a split-level house. */
final class Parts {
  private Parts() {}

  /**
   * Names of levels, a set a part; each part after those that its levels are stated to stand
   * beside. Levels that nothing ties to a step are one part.
   */
  static List<TreeSet<String>> of(House house, Map<String, TreeSet<String>> below, Problems p) {
    List<TreeSet<String>> sets = joined(below);
    TreeSet<String> rest = new TreeSet<>();
    List<TreeSet<String>> split = new ArrayList<>();
    for (TreeSet<String> s : sets) {
      boolean stepped = stepped(house, s);
      if (stepped) {
        split.add(s);
      } else {
        rest.addAll(s);
      }
    }
    List<TreeSet<String>> out = new ArrayList<>();
    if (!rest.isEmpty()) {
      out.add(rest);
    }
    check(house, below, sets, p);
    for (boolean more = true; more; ) {
      more = false;
      for (TreeSet<String> s : List.copyOf(split)) {
        boolean known = besides(house, s).stream().allMatch(o -> holds(out, o) || s.contains(o));
        if (known) {
          out.add(s);
          split.remove(s);
          more = true;
        }
      }
    }
    if (!split.isEmpty()) {
      Level any = level(house, split.get(0).first());
      p.add(
          any.where(),
          "levels %s are said to stand beside each other in a circle. Maybe say beside: and step: on one side only",
          String.join(", ", split.get(0)));
      out.addAll(split);
    }
    return out;
  }

  private static void check(
      House house, Map<String, TreeSet<String>> below, List<TreeSet<String>> sets, Problems p) {
    for (Level l : house.levels()) {
      l.beside()
          .ifPresent(
              b -> {
                if (!below.containsKey(b.level())) {
                  p.add(
                      l.where(),
                      "level %s is beside %s, which is not a level",
                      l.name(),
                      b.level());
                } else if (sets.stream()
                    .anyMatch(s -> s.contains(l.name()) && s.contains(b.level()))) {
                  p.add(
                      l.where(),
                      "level %s is said to stand beside %s, but above: or the rooms put one over the other",
                      l.name(),
                      b.level());
                }
              });
    }
  }

  private static List<TreeSet<String>> joined(Map<String, TreeSet<String>> below) {
    List<TreeSet<String>> sets = new ArrayList<>();
    below.forEach(
        (name, under) -> {
          TreeSet<String> mine = new TreeSet<>(under);
          mine.add(name);
          for (TreeSet<String> s : List.copyOf(sets)) {
            if (s.stream().anyMatch(mine::contains)) {
              mine.addAll(s);
              sets.remove(s);
            }
          }
          sets.add(mine);
        });
    return sets;
  }

  private static boolean stepped(House house, TreeSet<String> s) {
    return house.levels().stream().anyMatch(l -> s.contains(l.name()) && l.beside().isPresent());
  }

  private static List<String> besides(House house, TreeSet<String> s) {
    return house.levels().stream()
        .filter(l -> s.contains(l.name()))
        .flatMap(l -> l.beside().stream())
        .map(Level.Beside::level)
        .filter(o -> house.levels().stream().anyMatch(l -> l.name().equals(o)))
        .toList();
  }

  private static boolean holds(List<TreeSet<String>> sets, String level) {
    return sets.stream().anyMatch(s -> s.contains(level));
  }

  private static Level level(House house, String name) {
    return house.levels().stream().filter(l -> l.name().equals(name)).findFirst().orElseThrow();
  }
}
