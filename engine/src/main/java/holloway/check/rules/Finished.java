package holloway.check.rules;

import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.Site;
import holloway.house.RulePlace;
import holloway.limits.Figure;
import holloway.limits.RuleKey;
import holloway.limits.RulePack;
import holloway.limits.WiringFigures;
import holloway.plan.Plan;
import holloway.request.Job;
import holloway.request.Request;
import holloway.survey.Placed;
import holloway.survey.Wall;
import holloway.survey.WallNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A plan beside the house it is for, as the rules read it. */
final class Finished {
  private final Plan plan;
  private final HollowHouse house;
  private final Request request;
  private final Map<String, Member> members = new TreeMap<>();
  private final Map<String, Wall> walls = new TreeMap<>();

  Finished(Plan plan, HollowHouse house, Request request) {
    this.plan = plan;
    this.house = house;
    this.request = request;
    house.framed().members().forEach(m -> members.put(m.id(), m));
    placed().walls().forEach(w -> walls.put(w.id(), w));
  }

  /** A hole to be made and the crossing it lies on. */
  record Made(Plan.PlannedHole hole, Site site) {}

  List<Made> holes() {
    List<Made> out = new ArrayList<>();
    for (Plan.PlannedHole h : plan.holes()) {
      house.findSite(h.id()).ifPresent(s -> out.add(new Made(h, s)));
    }
    return out;
  }

  Plan plan() {
    return plan;
  }

  HollowHouse house() {
    return house;
  }

  Request request() {
    return request;
  }

  Placed placed() {
    return house.framed().placed();
  }

  RulePlace place() {
    return placed().house().rulePlace();
  }

  RulePack pack() {
    return placed().house().rulePack();
  }

  /** The figure in force: the person's own, else the usual one. */
  Figure figure(RuleKey key, Figure usual) {
    return placed().house().ownRules().of(key, usual);
  }

  /** How binding it is here. */
  Severity severity(RuleKey key, Severity usual) {
    return placed().house().ownRules().severity(key, usual);
  }

  /** Distance from power, and boxes shared with it: the UK has a standard of its own. */
  Source power(Source us) {
    return place() == RulePlace.UK ? WiringFigures.UK_FROM_POWER.cited() : us;
  }

  /** What is stated of the work and the cable. */
  Job job() {
    return request.shop().job();
  }

  Optional<Wall> wall(String id) {
    return Optional.ofNullable(walls.get(id));
  }

  List<Member> pierced(Site site) {
    return site.pierces().stream()
        .flatMap(id -> Optional.ofNullable(members.get(id)).stream())
        .toList();
  }

  /** A member by its kind and what it is part of: nobody knows it by its id. */
  String named(Member m) {
    Optional<String> wall = wall(m.owner()).map(w -> WallNames.at(w, m.box().x().mid()));
    Optional<String> floor =
        house.framed().decks().stream()
            .filter(d -> d.id().equals(m.owner()))
            .map(d -> "floor of " + d.level())
            .findFirst();
    boolean track =
        GrommetInSteel.isSteel(m.owner(), this)
            && (m.kind() == MemberKind.TOP_PLATE || m.kind() == MemberKind.BOTTOM_PLATE);
    String kind = track ? "steel track" : m.kind().word();
    return kind + " of the " + wall.or(() -> floor).orElse(m.owner());
  }

  /** A space by its kind and, where it is in a wall, that wall. */
  String named(Hollow h) {
    return wall(h.owner())
        .map(w -> h.kind().word() + " of the " + WallNames.at(w, h.clear().x().mid()))
        .orElse(h.kind().word());
  }

  boolean pierces(Site site, MemberKind... kinds) {
    return pierced(site).stream().anyMatch(m -> List.of(kinds).contains(m.kind()));
  }

  boolean isGarage(String room) {
    return placed().rooms().stream().anyMatch(r -> r.name().equals(room) && r.room().garage());
  }

  /** A wall that is said to part the garage from the house, or that shows to both. */
  boolean separates(Wall wall) {
    boolean garage = wall.faces().stream().anyMatch(f -> isGarage(f.room()));
    boolean living = wall.faces().stream().anyMatch(f -> !isGarage(f.room()));
    return wall.garageSeparation() || garage && living;
  }
}
