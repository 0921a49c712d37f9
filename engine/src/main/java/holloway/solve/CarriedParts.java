package holloway.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * Lays the parts of an old proof on a changed question, so that the new proof need not begin from
 * nothing. Every plan of the new question is again in exactly one part: where a work can no longer
 * be opened, or is opened by all, the half that speaks of the contrary is left out; a zone that was
 * not told apart before splits every part. Shares are any shares within the limits of their rows,
 * so the old ones may be taken over; what they prove is looked up again wherever it may be less.
 */
final class CarriedParts {
  private final Task task;
  private final Bound.Ground on;
  private final Bound.Ground before;
  private final Carry carry;
  private final boolean grown;

  /** Classes of cables, and with them their room and its rent, mean the same now. */
  private final boolean sameClasses;

  /**
   * By lending and lifted work, as they are numbered now, and class: the old number of the lift.
   */
  private final Map<List<Integer>, Integer> oldLift = new HashMap<>();

  /** Old number to new; −1 where it is gone. */
  private final int[] placeOf;

  private final int[] groupOf;

  /** By new group: its paths may have become shorter, or it was not there. */
  private final boolean[] stale;

  /**
   * @param carry from the graph of {@code old} to the task's
   */
  CarriedParts(Task old, Bound.Ground before, Task task, Bound.Ground on, Carry carry) {
    this.task = task;
    this.before = before;
    this.on = on;
    this.carry = carry;
    boolean sameScale = old.order.profile() == task.order.profile();
    grown =
        carry.sameGraph
            && sameScale
            && before.places().directed == on.places().directed
            && task.order.bans().containsAll(old.order.bans());
    sameClasses = on.places().sameClasses(before.places());
    List<Lifts.Lift> lifts = before.places().lifts().list;
    for (int l = 0; l < lifts.size(); l++) {
      Lifts.Lift was = lifts.get(l);
      oldLift.put(List.of(carry.works[was.work()], carry.works[was.teller()], was.without()), l);
    }
    List<Places.Place> places = before.places().places;
    placeOf = new int[places.size()];
    for (int p = 0; p < placeOf.length; p++) {
      Places.Place was = places.get(p);
      boolean other = was.isRoom() && !sameClasses && was.work() > 0;
      Places.Place now = other ? null : carry.place(was);
      placeOf[p] = now == null ? -1 : on.places().indexOf(now);
    }
    List<Groups.Group> groups = on.groups().list;
    stale = new boolean[groups.size()];
    Arrays.fill(stale, true);
    groupOf = new int[before.groups().list.size()];
    for (int g = 0; g < groupOf.length; g++) {
      groupOf[g] = now(old, before.groups().list.get(g));
      if (groupOf[g] >= 0) {
        stale[groupOf[g]] =
            !grown || !likeBefore(old, before.groups().list.get(g), groups.get(groupOf[g]));
      }
    }
  }

  /** The group of like runs now, −1 if there is none. */
  private int now(Task old, Groups.Group g) {
    List<Groups.Group> groups = on.groups().list;
    Order.Wanted was = old.order.runs().get(g.runs()[0]);
    for (int i = 0; i < groups.size(); i++) {
      Order.Wanted is = task.order.runs().get(groups.get(i).runs()[0]);
      boolean same = is.from().equals(was.from()) && is.to().equals(was.to());
      if (same && is.cable().equals(was.cable()) && pin(task, is).equals(pin(old, was))) {
        return i;
      }
    }
    return -1;
  }

  private static String pin(Task t, Order.Wanted w) {
    return t.order.pins().getOrDefault(w.id(), "");
  }

  /** As many runs, walked the same way. */
  private boolean likeBefore(Task old, Groups.Group was, Groups.Group is) {
    return was.runs().length == is.runs().length
        && Arrays.equals(old.ends[was.from()], task.ends[is.from()])
        && Arrays.equals(old.ends[was.to()], task.ends[is.to()]);
  }

  List<BoundPart> of(List<BoundPart> parts) {
    List<BoundPart> out = new ArrayList<>();
    for (BoundPart p : parts) {
      int[] prepaid = carried(p.prepaid);
      int[] shut = carried(p.shut);
      if (prepaid != null && shut != null && possible(prepaid, shut)) {
        out.addAll(zonesApart(carried(p, without(prepaid, on.paid()), closable(shut))));
      }
    }
    out.forEach(this::value);
    return out;
  }

  /** Works that are gone are shut for all, so they need no word. */
  private int[] carried(int[] works) {
    return Arrays.stream(works).map(w -> carry.works[w]).toArray();
  }

  private boolean possible(int[] prepaid, int[] shut) {
    boolean opens = Arrays.stream(prepaid).allMatch(w -> w >= 0 && !task.net.workShut[w]);
    return opens && Arrays.stream(shut).noneMatch(w -> Places.has(on.paid(), w));
  }

  private int[] closable(int[] shut) {
    return Arrays.stream(shut).filter(w -> w >= 0 && !task.net.workShut[w]).toArray();
  }

  private static int[] without(int[] works, int[] some) {
    return Arrays.stream(works).filter(w -> !Places.has(some, w)).toArray();
  }

  private List<BoundPart> zonesApart(BoundPart part) {
    List<BoundPart> out = List.of(part);
    for (int z : on.zones()) {
      List<BoundPart> next = new ArrayList<>();
      for (BoundPart p : out) {
        boolean told = Places.has(p.prepaid, z) || Places.has(p.shut, z);
        if (told || Places.has(on.paid(), z)) {
          next.add(p);
        } else {
          next.add(p.with(z));
          next.add(p.without(z));
        }
      }
      out = next;
    }
    return out;
  }

  private BoundPart carried(BoundPart p, int[] prepaid, int[] shut) {
    List<Groups.Group> groups = on.groups().list;
    boolean[] lost = stale.clone();
    Shares shares = shares(p, prepaid, lost);
    BoundPart out = BoundPart.carried(task.net, prepaid, shut, on.always(), shares, p.whole);
    // Never null: a part without paths would be given another's shares, and not be looked up again.
    out.known = new ArrayList<>();
    groups.forEach(g -> out.known.add(new ArrayList<>()));
    for (int g = 0; g < groupOf.length && p.known != null; g++) {
      if (groupOf[g] >= 0) {
        List<Path> to = out.known.get(groupOf[g]);
        p.known.get(g).stream().map(carry::path).filter(Objects::nonNull).forEach(to::add);
      }
    }
    if (carry.sameGraph) {
      out.often = p.often;
    }
    out.each = new long[groups.size()];
    Arrays.fill(out.each, Long.MIN_VALUE);
    for (int g = 0; g < groupOf.length && p.each != null; g++) {
      if (groupOf[g] >= 0 && !lost[groupOf[g]]) {
        out.each[groupOf[g]] = p.each[g];
      }
    }
    return out;
  }

  private void carryLifts(Shares old, Shares out) {
    List<Lifts.Lift> now = on.places().lifts().list;
    for (int l = 0; l < now.size(); l++) {
      Lifts.Lift is = now.get(l);
      Integer was = oldLift.get(List.of(is.work(), is.teller(), is.without()));
      boolean same = was != null && (is.without() == 0 || sameClasses);
      out.lift[l] = same ? old.lift[was] : 0;
    }
  }

  /**
   * The old shares where there still is a place for them.
   *
   * @param lost takes the groups that had to let go of some
   */
  private Shares shares(BoundPart p, int[] prepaid, boolean[] lost) {
    int[] size = on.groups().list.stream().mapToInt(g -> g.runs().length).toArray();
    Shares out = new Shares(on.places(), size);
    for (int w : prepaid) {
      out = Places.has(on.zones(), w) ? out : out.prepaid(w);
    }
    for (int g = 0; g < groupOf.length; g++) {
      for (int at = 0; at < placeOf.length && groupOf[g] >= 0; at++) {
        long units = p.best.units[g][at];
        if (units > 0 && placeOf[at] >= 0) {
          out.units[groupOf[g]][placeOf[at]] = units;
        } else if (units > 0) {
          lost[groupOf[g]] = true;
        }
      }
    }
    carryLifts(p.best, out);
    int holes = carry.holes.length;
    for (int r = 0; r < (sameClasses ? p.best.rent.length : holes); r++) {
      int hole = carry.holes[r % holes];
      if (hole >= 0) {
        out.rent[r / holes * on.places().holePlaces.length + hole] = p.best.rent[r];
      }
    }
    out.projectAll();
    for (int g = 0; g < groupOf.length; g++) {
      for (int at = 0; at < placeOf.length && groupOf[g] >= 0; at++) {
        if (placeOf[at] >= 0 && out.units[groupOf[g]][placeOf[at]] < p.best.units[g][at]) {
          lost[groupOf[g]] = true;
        }
      }
    }
    return out;
  }

  /** Looks up what is not known of the part's value. */
  private void value(BoundPart part) {
    GroupPaths paths =
        new GroupPaths(task, on.groups().list, on.places(), part.shutWorks(), on.fits());
    long[] each = part.each == null ? new long[stale.length] : part.each;
    if (part.each == null) {
      Arrays.fill(each, Long.MIN_VALUE);
    }
    IntStream.range(0, each.length)
        .parallel()
        .filter(g -> each[g] == Long.MIN_VALUE)
        .forEach(
            g -> {
              Path found = paths.find(g, part.best.units[g]);
              each[g] = found == null ? Network.SHUT : found.price();
            });
    long sum = -part.best.rents();
    for (long v : each) {
      part.impossible |= v >= Network.SHUT;
      sum = part.impossible ? sum : Math.addExact(sum, v);
    }
    part.value = part.impossible ? Long.MIN_VALUE : sum;
    part.each = each;
  }
}
