package holloway.hollow;

import holloway.framing.Framed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The hollows of a house with all crossings that do not hang on where its ends are: nine parts in
 * ten of the work. Made once, it gives the hollow house for any ends, the same as from nothing. A
 * value; may be asked on several threads.
 */
public final class HollowBase {
  private final Draft base;
  private final List<AccessPlace> patches;
  private final FloorWays floors;
  private final Looked looked = new Looked(true);

  HollowBase(Framed framed) {
    base = new Draft(framed);
    new StudBays(framed).bays().forEach(base::hollow);
    new JoistBays(framed, base.refused).bays().forEach(base::hollow);
    new FlatRoofBays(framed).bays().forEach(base::hollow);
    new AtticSpace(framed, base.refused).hollows().forEach(base::hollow);
    new UnderFloors(framed, base.refused).hollows().forEach(base::hollow);
    RoomSpaces.hollows(framed).forEach(base::hollow);
    List<ChaseSpaces.Shaft> shafts = new ChaseSpaces(framed, base.refused).shafts();
    shafts.forEach(s -> s.segments().forEach(g -> base.hollow(g.hollow())));
    StairSpaces.hollows(framed).forEach(base::hollow);
    ConduitSpaces.find(base);
    BoardVoids.find(base);
    StrapVoids.find(base);
    LoweredSpaces.find(base);
    SkirtingSpaces.find(base);
    PorchSpaces.find(base);
    AtticJoins.find(base);
    KneeSites.find(base);
    new PlateSites(base).find();
    new StudSites(base).find();
    FlatRoofBays.places(base);
    new BalloonSites(base).find();
    new JoistSites(base).find();
    new UnderJoistSites(base).find();
    ChaseSites chases = new ChaseSites(base);
    shafts.forEach(chases::find);
    patches = WallPatches.of(base);
    floors = new FloorWays(base);
  }

  public Framed framed() {
    return base.framed;
  }

  /**
   * The whole hollow house.
   *
   * @param interests spots near which crossings of surfaces and outside faces are looked for
   */
  public HollowHouse near(List<Interest> interests) {
    Draft draft = new Draft(base, looked);
    ChannelSpaces.find(draft, interests);
    new SurfaceSites(draft).find(interests);
    new RoomToRoomSites(draft, floors).find();
    new StairSites(draft).find();
    OpenSites.find(draft);
    LowWallSites.find(draft);
    new OuterSites(draft).find(interests);
    new PorchSites(draft, interests).find();
    new LoweredSites(draft, interests).find();
    new SkirtingSites(draft, interests).find();
    BehindBattens.find(draft, interests);
    draft.accesses.addAll(patches);
    ThingAccesses.find(draft);
    draft.accesses.removeIf(a -> !draft.isOpen(a.room()));
    return new HollowHouse(
        draft.framed,
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
      } else if (UnderJoists.is(h.id())) {
        out.add(
            new Stand(h.id(), "the " + UnderJoists.room(h.id()) + ", under the joists", "cellar"));
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
