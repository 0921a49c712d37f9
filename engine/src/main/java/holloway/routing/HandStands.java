package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Stand;
import holloway.hollow.UnderJoists;
import holloway.hollow.WorkKind;
import holloway.request.Wishes;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Stands that hands work from in the open: rooms, attics, floors from below, outside and a ladder
 * there; with what setting them up needs.
 */
final class HandStands {
  /** Higher than this over the ground floor a ladder is set up outside; from experience. */
  private static final long LADDER = 2_400_000_000L;

  /** A stand as a method sees it: key of its factor, words after "from", id, works. */
  record Hand(String stand, String words, String id, int[] works) {
    /** The same where something has to be opened first. */
    Hand with(String newWords, int[] newWorks) {
      return new Hand(stand, newWords, id, newWorks);
    }
  }

  private final Map<String, Stand> stands = new HashMap<>();
  private final GraphDraft draft;
  private final Prices prices;
  private final long groundZ;

  HandStands(HollowHouse house, GraphDraft draft, Prices prices, long groundZ) {
    house.stands().forEach(s -> stands.put(s.id(), s));
    this.draft = draft;
    this.prices = prices;
    this.groundZ = groundZ;
  }

  /** The stand at a point of a hand hollow; empty where the person's wishes forbid it. */
  Optional<Hand> at(Hollow h, Point3 p, Wishes wishes) {
    return switch (h.kind()) {
      case ATTIC ->
          wishes.attic() == Wishes.Season.NEVER
              ? Optional.empty()
              : Optional.of(hand(h, "attic", h.stand().orElseThrow()));
      case CRAWLSPACE -> Optional.of(hand(h, "crawlspace", h.stand().orElseThrow()));
      case OUTSIDE_FACE -> {
        boolean high = p.z() > groundZ + LADDER;
        yield Optional.of(hand(h, high ? "ladder" : "outside", high ? "ladder" : "outside"));
      }
      default -> {
        boolean under = UnderJoists.is(h.id());
        boolean avoided = !under && wishes.avoid().contains(h.owner());
        yield avoided
            ? Optional.empty()
            : Optional.of(opened(h, hand(h, under ? "cellar" : "room", h.stand().orElseThrow())));
      }
    };
  }

  private Hand hand(Hollow h, String key, String standId) {
    Stand s = stands.get(standId);
    return new Hand(key, s.words(), standId, works(s));
  }

  /** What has to come off before a hand gets in: skirting, ceiling tiles, a panel. */
  private Hand opened(Hollow h, Hand hand) {
    return switch (h.kind()) {
      case SKIRTING -> {
        String room = "skirting/" + h.owner() + "/set-up";
        long length = h.clear().x().length();
        int setUp = draft.work(room, WorkKind.ACCESS, prices.skirtingRoom(), 0, 0, "");
        int off = draft.work(h.id() + "/off", WorkKind.ACCESS, prices.skirting(length), 0, 0, "");
        yield hand.with(hand.words() + ", skirting off", new int[] {setUp, off});
      }
      case LOWERED_CEILING -> {
        int tiles = draft.work(h.id() + "/opened", WorkKind.ACCESS, prices.tiles(), 0, 0, "");
        yield hand.with(hand.words() + ", over its lowered ceiling", new int[] {tiles});
      }
      default -> hand;
    };
  }

  private int[] works(Stand s) {
    if (s.zone().isEmpty()) {
      return new int[0];
    }
    return new int[] {
      draft.work("set-up/" + s.id(), WorkKind.ZONE, prices.zone(s.zone()), 0, 0, s.zone())
    };
  }

  static boolean isOutside(Hollow h) {
    return h.kind() == HollowKind.OUTSIDE_FACE;
  }
}
