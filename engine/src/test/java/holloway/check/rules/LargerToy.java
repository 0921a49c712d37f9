package holloway.check.rules;

import holloway.check.Spoiled;
import holloway.check.ToyHouse;
import holloway.check.ToyPlan;
import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.house.Fill;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The toy house with members, hollows and crossings added; its plan passes all added crossings. */
final class LargerToy {
  private static final long MM = ToyHouse.MM;
  private final HollowHouse base;
  private final List<Member> members;
  private final List<Hollow> hollows;
  private final List<Site> sites = new ArrayList<>();

  LargerToy(HollowHouse base) {
    this.base = base;
    members = new ArrayList<>(base.framed().members());
    hollows = new ArrayList<>(base.hollows());
  }

  void member(String id, MemberKind kind, Box box) {
    members.add(new Member(id, kind, Frame.WORLD, box, id.split("/")[0], false));
  }

  void outside(String id) {
    hollows.add(
        new Hollow(
            id,
            HollowKind.OUTSIDE_FACE,
            Frame.WORLD,
            new Box(4114 * MM, 4200 * MM, 0, 3000 * MM, 0, 2400 * MM),
            Optional.empty(),
            Fill.EMPTY,
            "east",
            Optional.of("outside")));
  }

  void site(Site site) {
    sites.add(site);
  }

  void site(String id, SiteKind kind, Point3 a, Point3 b, String... pierces) {
    sites.add(
        new Site(
            id,
            kind,
            a,
            b,
            "east/bay-1200",
            "attic",
            List.of(pierces),
            List.of(),
            51,
            51,
            false,
            false));
  }

  HollowHouse house() {
    List<Site> all = new ArrayList<>(base.sites());
    all.addAll(sites);
    return new HollowHouse(
        new Framed(base.framed().placed(), members, List.of(), List.of()),
        hollows,
        all,
        base.stands(),
        List.of());
  }

  Plan plan(int bit) {
    Plan good = ToyPlan.good();
    List<Plan.PlannedHole> holes = new ArrayList<>(good.holes());
    for (Site s : sites) {
      holes.add(
          ToyPlan.hole(
              s.id(),
              "H" + (holes.size() + 1),
              s.middle(),
              s.hollowA(),
              List.of(ToyPlan.RUN),
              bit,
              1));
    }
    return Spoiled.with(good, holes, good.works());
  }
}
