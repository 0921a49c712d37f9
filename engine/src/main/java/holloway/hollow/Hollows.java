package holloway.hollow;

import holloway.framing.Framed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The hollow stage: from solid members to the spaces between them, the crossings, accesses and
 * stands.
 */
public final class Hollows {
  private Hollows() {}

  /**
   * @param interests spots near which crossings of surfaces and outside faces are looked for
   */
  public static HollowHouse of(Framed framed, List<Interest> interests) {
    Draft draft = new Draft(framed);
    new StudBays(framed).bays().forEach(draft::hollow);
    new JoistBays(framed, draft.refused).bays().forEach(draft::hollow);
    new FlatRoofBays(framed).bays().forEach(draft::hollow);
    new AtticSpace(framed, draft.refused).hollows().forEach(draft::hollow);
    new UnderFloors(framed, draft.refused).hollows().forEach(draft::hollow);
    RoomSpaces.hollows(framed).forEach(draft::hollow);
    List<ChaseSpaces.Shaft> shafts = new ChaseSpaces(framed, draft.refused).shafts();
    shafts.forEach(s -> s.segments().forEach(g -> draft.hollow(g.hollow())));
    StairSpaces.hollows(framed).forEach(draft::hollow);
    ConduitSpaces.find(draft);
    BoardVoids.find(draft);
    StrapVoids.find(draft);
    LoweredSpaces.find(draft);
    SkirtingSpaces.find(draft);
    PorchSpaces.find(draft);
    ChannelSpaces.find(draft, interests);
    AtticJoins.find(draft);
    KneeSites.find(draft);
    new PlateSites(draft).find();
    new StudSites(draft).find();
    FlatRoofBays.places(draft);
    new BalloonSites(draft).find();
    new JoistSites(draft).find();
    ChaseSites chases = new ChaseSites(draft);
    shafts.forEach(chases::find);
    new SurfaceSites(draft).find(interests);
    new RoomToRoomSites(draft).find();
    new StairSites(draft).find();
    OpenSites.find(draft);
    LowWallSites.find(draft);
    new OuterSites(draft).find(interests);
    new PorchSites(draft, interests).find();
    new LoweredSites(draft, interests).find();
    new SkirtingSites(draft, interests).find();
    BehindBattens.find(draft, interests);
    WallPatches.find(draft);
    ThingAccesses.find(draft);
    draft.accesses.removeIf(a -> !draft.isOpen(a.room()));
    return new HollowHouse(
        framed,
        List.copyOf(draft.hollows.values()),
        draft.sites,
        stands(draft),
        draft.accesses,
        draft.refused);
  }

  /**
   * The attic with the largest plan is the house's, others are low attics; crawlspaces, open cellar
   * ceilings, the outside and each room.
   */
  private static List<Stand> stands(Draft draft) {
    List<Stand> out = new ArrayList<>();
    List<Hollow> attics = new ArrayList<>(draft.ofKind(HollowKind.ATTIC));
    attics.sort(
        Comparator.comparingDouble((Hollow h) -> -h.area().orElseThrow().signedAreaMm2())
            .thenComparing(Hollow::id));
    for (int i = 0; i < attics.size(); i++) {
      out.add(
          new Stand(
              attics.get(i).id(),
              attics.size() == 1 ? "the attic" : "the attic under the " + attics.get(i).owner(),
              i == 0 ? "attic" : "attic-low"));
    }
    for (Hollow h : draft.hollows.values()) {
      if (h.kind() == HollowKind.CRAWLSPACE) {
        out.add(new Stand(h.id(), "the crawlspace", "crawlspace"));
      } else if (h.id().startsWith("under/")) {
        out.add(new Stand(h.id(), "the " + h.id().substring(6) + ", under the joists", "cellar"));
      } else if (h.kind() == HollowKind.ROOM_SURFACE) {
        out.add(new Stand(h.stand().orElseThrow(), "the " + h.owner(), ""));
      } else if (h.id().equals(RoomSpaces.OUTSIDE)) {
        out.add(new Stand("outside", "outside", ""));
        out.add(new Stand("ladder", "a ladder outside", "ladder"));
      }
    }
    return out;
  }
}
