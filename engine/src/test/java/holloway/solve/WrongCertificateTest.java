package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.certify.Verdict;
import holloway.plan.Certificate;
import holloway.plan.Certificate.Part;
import holloway.plan.Certificate.Share;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every way to spoil a good certificate is seen, and the sentence says what is wrong. */
class WrongCertificateTest {
  private static final HouseLike HOUSE = new HouseLike(3, 8, 8, 3, Profile.LEAST_WORK);
  private static Solved solved;
  private static Certificate good;

  @BeforeAll
  static void plan() {
    solved = JointPlanner.solve(HOUSE.graph, HOUSE.order, Budget.QUICK, Progress.SILENT);
    good = solved.bound();
    assertEquals(Optional.empty(), verdict(good).refusal());
  }

  private static Verdict verdict(Certificate c) {
    return Certified.check(HOUSE.graph, HOUSE.order, solved.plan(), c);
  }

  private static void refused(Certificate c, String words) {
    String said = verdict(c).refusal().orElse("accepted");
    assertTrue(said.contains(words), said);
  }

  private static Certificate with(
      long bound, List<Integer> paid, List<List<String>> runs, List<Part> parts) {
    return new Certificate(
        good.profile(), bound, good.grain(), paid, good.zones(), runs, good.directed(), parts);
  }

  private static Certificate withParts(List<Part> parts) {
    return with(good.bound(), good.paidByAll(), good.runs(), parts);
  }

  /** The part that the bound hangs on. */
  private static int least() {
    int out = 0;
    for (int i = 0; i < good.parts().size(); i++) {
      out = good.parts().get(i).bound() < good.parts().get(out).bound() ? i : out;
    }
    return out;
  }

  private static Certificate withLeast(UnaryOperator<Part> change) {
    List<Part> parts = new ArrayList<>(good.parts());
    parts.set(least(), change.apply(parts.get(least())));
    return withParts(parts);
  }

  private static Certificate withShare(UnaryOperator<Share> change) {
    return withLeast(
        p -> {
          List<Share> shares = new ArrayList<>(p.shares());
          int plain = shares.indexOf(plain(p));
          shares.set(plain, change.apply(shares.get(plain)));
          return withShares(p, shares);
        });
  }

  /** A share of a work that some group pays at some place. */
  private static Share plain(Part p) {
    Set<String> others = Set.of(Share.LIFT, Share.RENT, Share.ROOM);
    return p.shares().stream().filter(s -> !others.contains(s.place())).findFirst().orElseThrow();
  }

  private static Part withShares(Part p, List<Share> shares) {
    return new Part(p.prepaid(), p.shut(), p.bound(), p.impossible(), shares);
  }

  @Test
  void anInflatedBound() {
    long proved = verdict(good).bound();
    assertEquals(
        Optional.empty(),
        verdict(with(proved, good.paidByAll(), good.runs(), good.parts())).refusal());
    refused(with(proved + 1, good.paidByAll(), good.runs(), good.parts()), "it claims");
    refused(
        withLeast(p -> new Part(p.prepaid(), p.shut(), p.bound() * 2, p.impossible(), p.shares())),
        "claims");
  }

  @Test
  void aPartSaidToHoldNoPlan() {
    refused(
        withLeast(p -> new Part(p.prepaid(), p.shut(), p.bound(), true, List.of())),
        "claims that it holds no plan");
  }

  @Test
  void aShareRaisedOverThePriceOfTheWork() {
    refused(
        withShare(s -> new Share(s.work(), s.place(), s.at(), s.group(), 90_000_000L)),
        "shares out");
  }

  @Test
  void aShareBelowNothing() {
    refused(withShare(s -> new Share(s.work(), s.place(), s.at(), s.group(), -1)), "below nothing");
  }

  @Test
  void sharesTakenAway() {
    refused(withLeast(p -> withShares(p, List.of())), "claims");
  }

  @Test
  void aShareWhereNothingIs() {
    refused(
        withShare(s -> new Share(s.work(), s.place(), 1_000_000, s.group(), s.units())),
        "no such thing");
    refused(withShare(s -> new Share(s.work(), s.place(), s.at(), 99, s.units())), "no such thing");
    refused(
        withShare(s -> new Share(1_000_000, s.place(), s.at(), s.group(), s.units())),
        "no such thing");
    refused(
        withShare(s -> new Share(s.work(), "wall", s.at(), s.group(), s.units())), "no such thing");
  }

  @Test
  void figuresThatOverflow() {
    refused(
        withLeast(
            p -> {
              List<Share> shares = new ArrayList<>(p.shares());
              Share s = plain(p);
              Share huge = new Share(s.work(), s.place(), s.at(), s.group(), Long.MAX_VALUE);
              shares.add(huge);
              shares.add(huge);
              return withShares(p, shares);
            }),
        "too large");
  }

  @Test
  void aMissingSetOfZones() {
    for (int i = 0; i < good.parts().size(); i++) {
      List<Part> parts = new ArrayList<>(good.parts());
      parts.remove(i);
      refused(withParts(parts), "part");
    }
  }

  @Test
  void aPartThatContradictsItself() {
    refused(
        withLeast(
            p -> {
              List<Integer> both = new ArrayList<>(p.prepaid());
              both.addAll(p.shut());
              return new Part(both, both, p.bound(), p.impossible(), p.shares());
            }),
        "both opens and shuts");
  }

  @Test
  void aPartPaidForAWorkItDoesNotOpen() {
    refused(
        withLeast(
            p -> {
              List<Integer> more = new ArrayList<>(p.prepaid());
              more.add(good.zones().get(0) + 5);
              return new Part(more, p.shut(), p.bound(), p.impossible(), p.shares());
            }),
        "part");
  }

  @Test
  void aWorkPaidByAllThatIsNot() {
    List<Integer> paid = new ArrayList<>(good.paidByAll());
    int other = 0;
    while (paid.contains(other) || good.zones().contains(other)) {
      other++;
    }
    paid.add(other);
    refused(with(good.bound(), paid, good.runs(), good.parts()), "paid by every plan");
  }

  @Test
  void wrongRuns() {
    List<List<String>> fewer = new ArrayList<>(good.runs());
    fewer.remove(0);
    refused(with(good.bound(), good.paidByAll(), fewer, good.parts()), "leaves out");
    List<List<String>> foreign = new ArrayList<>(good.runs());
    foreign.set(0, List.of("nobody's run"));
    refused(with(good.bound(), good.paidByAll(), foreign, good.parts()), "has not");
    List<List<String>> twice = new ArrayList<>(good.runs());
    twice.add(good.runs().get(0));
    refused(with(good.bound(), good.paidByAll(), twice, good.parts()), "twice");
    List<String> all = good.runs().stream().flatMap(List::stream).toList();
    refused(with(good.bound(), good.paidByAll(), List.of(all), good.parts()), "not alike");
  }

  /** Nobody may trade places: what one group proved is another's. */
  @Test
  void groupsExchanged() {
    List<List<String>> turned = new ArrayList<>(good.runs());
    Collections.rotate(turned, 1);
    assertTrue(
        !verdict(with(good.bound(), good.paidByAll(), turned, good.parts())).accepted(),
        "exchanged groups were accepted");
  }

  @Test
  void directionsThatTheHouseDoesNotAllow() {
    Certificate c =
        new Certificate(
            good.profile(),
            good.bound(),
            good.grain(),
            good.paidByAll(),
            good.zones(),
            good.runs(),
            true,
            good.parts());
    assertTrue(!good.directed());
    refused(c, "its shares have directions");
  }

  @Test
  void anotherProfile() {
    Certificate c =
        new Certificate(
            "shortest",
            good.bound(),
            good.grain(),
            good.paidByAll(),
            good.zones(),
            good.runs(),
            good.directed(),
            good.parts());
    refused(c, "profile");
  }

  /** The house has changed since: cheaper works, and a graph with other numbers. */
  @Test
  void aStaleGraph() {
    RouteGraph g = HOUSE.graph;
    List<RouteGraph.Work> cheap =
        g.works().stream()
            .map(
                w ->
                    new RouteGraph.Work(
                        w.id(),
                        w.name(),
                        w.kind(),
                        w.price() / 2,
                        w.holes(),
                        w.patches(),
                        w.zone()))
            .toList();
    RouteGraph cheaper = new RouteGraph(g.nodes(), g.edges(), g.holes(), cheap, g.terminals());
    assertTrue(!Certified.check(cheaper, HOUSE.order, solved.plan(), good).accepted());
    HouseLike other = new HouseLike(4, 6, 8, 3, Profile.LEAST_WORK);
    assertTrue(!Certified.check(other.graph, HOUSE.order, solved.plan(), good).accepted());
  }

  /** Whatever one share becomes, what is accepted is never over the plan. */
  @Test
  void whateverIsAcceptedIsTrue() {
    Random random = new Random(5);
    int accepted = 0;
    for (int i = 0; i < 200; i++) {
      Part p = good.parts().get(least());
      List<Share> shares = new ArrayList<>(p.shares());
      for (int k = 0; k < 3; k++) {
        int at = random.nextInt(shares.size());
        Share s = shares.get(at);
        long units = Math.round(s.units() * random.nextDouble() * 1.5);
        shares.set(at, new Share(s.work(), s.place(), s.at(), s.group(), units));
      }
      List<Part> parts = new ArrayList<>(good.parts());
      parts.set(least(), new Part(p.prepaid(), p.shut(), 0, false, shares));
      Verdict v = verdict(with(0, good.paidByAll(), good.runs(), parts));
      accepted += v.accepted() ? 1 : 0;
      assertTrue(v.bound() <= solved.plan().totals().objective(), "try " + i);
    }
    assertTrue(accepted > 5 && accepted < 200, accepted + " accepted");
  }
}
