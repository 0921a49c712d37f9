package holloway.routing;

import holloway.framing.Attic;
import holloway.framing.Deck;
import holloway.framing.Skylights;
import holloway.hollow.Away;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.hollow.Solids;
import holloway.hollow.UnderJoists;
import holloway.hollow.Way;
import holloway.request.Wishes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Laying by hand: every hand hollow gets the net of lines that its kind asks for. */
final class HandNets {
  private final HollowHouse house;
  private final GraphDraft draft;
  private final Prices prices;
  private final Solids solids;
  private final Accesses accesses;
  private final HandStands stands;
  private final Wishes wishes;
  private final FaceNets faces;
  private final NetMemory memory;

  HandNets(
      HollowHouse house,
      GraphDraft draft,
      Prices prices,
      Solids solids,
      Accesses accesses,
      HandStands stands,
      Wishes wishes,
      FaceNets faces,
      NetMemory memory) {
    this.memory = memory;
    this.house = house;
    this.draft = draft;
    this.prices = prices;
    this.solids = solids;
    this.accesses = accesses;
    this.stands = stands;
    this.wishes = wishes;
    this.faces = faces;
  }

  /**
   * @param ends entries that come from wanted ends, by hollow id
   */
  void connect(Map<String, List<Entry>> ends, HandNodes handNodes) {
    Map<String, List<Entry>> entries = new TreeMap<>();
    ends.forEach((hollow, list) -> entries.put(hollow, new ArrayList<>(list)));
    for (Site s : house.sites()) {
      for (String hollow : List.of(s.hollowA(), s.hollowB())) {
        int node = handNodes.at(s, hollow);
        if (node >= 0) {
          boolean overhead =
              s.kind() == SiteKind.CEILING
                  && HandStands.isOutside(house.findHollow(hollow).orElseThrow());
          entries
              .computeIfAbsent(hollow, k -> new ArrayList<>())
              .add(new Entry(node, draft.nodes.get(node).at(), isHub(s), overhead));
        }
      }
    }
    // a tube may end in a room that nobody works in: there is no surface to lead on over
    entries.forEach((hollow, list) -> house.findHollow(hollow).ifPresent(h -> net(h, list)));
  }

  /**
   * A bay without an outlet in it is one among many; everything else gets laying lines of its own.
   */
  private boolean isHub(Site s) {
    return switch (s.kind()) {
      case TOP_PLATE, BOTTOM_PLATE ->
          accesses.in(s.hollowA()).stream().anyMatch(a -> a.stand().equals("cut-out"));
      default -> true;
    };
  }

  private void net(Hollow h, List<Entry> entries) {
    Optional<HandStands.Hand> stand =
        stands.at(h, draft.nodes.get(entries.get(0).node()).at(), wishes);
    int[] works = stand.map(HandStands.Hand::works).orElse(new int[0]);
    memory.net(draft, h, entries, works, () -> lay(h, entries, stand));
  }

  private void lay(Hollow h, List<Entry> entries, Optional<HandStands.Hand> stand) {
    if (h.kind() == HollowKind.OUTSIDE_FACE && h.area().isPresent()) {
      stand.ifPresent(
          st ->
              new LayNet(draft, prices, solids, porchTerms(h, st), away(), memory.floors)
                  .connect(entries));
    } else if (h.kind() == HollowKind.OUTSIDE_FACE) {
      faces.outside(h, entries);
    } else if (h.kind() == HollowKind.SKIRTING) {
      stand.ifPresent(st -> new LineNet(draft, prices, h, "skirting").connect(entries, st.works()));
    } else if (h.kind() == HollowKind.LOWERED_CEILING && h.area().isEmpty()) {
      stand.ifPresent(st -> new LineNet(draft, prices, h, "lowered").connect(entries, st.works()));
    } else if (h.kind() == HollowKind.ATTIC
        || h.kind() == HollowKind.LOWERED_CEILING
        || h.kind() == HollowKind.CRAWLSPACE
        || UnderJoists.is(h.id())) {
      stand.ifPresent(
          st ->
              new LayNet(draft, prices, solids, layTerms(h, st), away(), memory.floors)
                  .connect(entries));
    } else if (h.id().startsWith("stairs/") && stand.isPresent()) {
      new CupboardNet(draft, prices, solids).connect(h, entries);
    } else if (h.kind() == HollowKind.ROOM_SURFACE && stand.isPresent()) {
      faces.room(h, entries);
    }
  }

  private Away away() {
    return new Away(house.framed().placed().house().layout());
  }

  /** Under and between the bare joists of a porch. */
  private LayNet.Terms porchTerms(Hollow h, HandStands.Hand st) {
    long joists = h.frame().origin().z();
    return new LayNet.Terms(
        h,
        "outside",
        joists - 25_000_000,
        joists - 25_000_000,
        st.works(),
        Way.OUTSIDE.bit(),
        false,
        List.of());
  }

  private LayNet.Terms layTerms(Hollow h, HandStands.Hand st) {
    if (h.kind() == HollowKind.ATTIC) {
      Attic a =
          house.framed().attics().stream()
              .filter(x -> ("attic/" + x.id()).equals(h.id()))
              .findFirst()
              .orElseThrow();
      return new LayNet.Terms(
          h,
          "attic",
          a.chordTopZ() + 25_000_000,
          a.plateZ() + 60_000_000,
          st.works(),
          Way.ATTIC.bit(),
          !a.outline().equals(a.roofline()),
          Skylights.corners(house.framed().placed(), a.roof()));
    }
    if (h.kind() == HollowKind.LOWERED_CEILING) {
      long mid = h.frame().origin().z() + h.clear().z().mid();
      return new LayNet.Terms(h, "lowered", mid, mid, st.works(), 0, false, List.of());
    }
    Deck d =
        house.framed().decks().stream()
            .filter(x -> x.id().equals(h.owner()))
            .findFirst()
            .orElseThrow();
    long floor = d.frame().origin().z();
    String key = h.kind() == HollowKind.CRAWLSPACE ? "crawlspace" : "cellar";
    return new LayNet.Terms(
        h,
        key,
        floor + d.joistZ().lo() - 25_000_000,
        floor + d.joistZ().mid(),
        st.works(),
        Way.UNDER_FLOOR.bit(),
        false,
        List.of());
  }
}
