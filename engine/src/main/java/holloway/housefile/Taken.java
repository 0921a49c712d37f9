package holloway.housefile;

import holloway.house.Assumption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What was taken by place and era, and for what: it is left out when the house is written. */
final class Taken {
  private final Set<String> all = new TreeSet<>();

  Taken(List<Assumption> assumed) {
    assumed.forEach(a -> all.add(a.what() + "\t" + a.of()));
  }

  boolean has(String what, String of) {
    return all.contains(what + "\t" + of);
  }
}
