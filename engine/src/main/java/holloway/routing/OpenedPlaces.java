package holloway.routing;

import holloway.hollow.AccessPlace;
import holloway.hollow.HollowHouse;
import holloway.hollow.WorkKind;
import holloway.request.Wishes;

/** Places where a blind hollow could be opened, as nodes whose works are the opening. */
final class OpenedPlaces {
  private final HollowHouse house;
  private final GraphDraft draft;
  private final Prices prices;
  private final Accesses accesses;
  private final Wishes wishes;

  OpenedPlaces(
      HollowHouse house, GraphDraft draft, Prices prices, Accesses accesses, Wishes wishes) {
    this.house = house;
    this.draft = draft;
    this.prices = prices;
    this.accesses = accesses;
    this.wishes = wishes;
  }

  void bind() {
    for (AccessPlace a : house.accesses()) {
      if (!wishes.avoid().contains(a.room())) {
        boolean cut = isCut(a.kind());
        WorkKind kind = cut ? WorkKind.PATCH : WorkKind.ACCESS;
        int work = draft.work(a.id(), kind, prices.open(a), cut ? 1 : 0, cut ? 1 : 0, "");
        int node = draft.node(a.id(), a.at(), work);
        accesses.add(
            new Accesses.Access(
                node, a.hollow(), a.at(), stand(a.kind()), words(a), new int[] {work}));
      }
    }
  }

  private static boolean isCut(AccessPlace.Kind kind) {
    return kind == AccessPlace.Kind.WALL_PATCH || kind == AccessPlace.Kind.CEILING_PATCH;
  }

  /** Through a box, or past a register's boot, a bit goes in blind; boards lifted are a floor. */
  private static String stand(AccessPlace.Kind kind) {
    return switch (kind) {
      case LIFTED_BOARDS -> "room";
      case DATA_BOX, REGISTER -> "cut-out";
      case WALL_PATCH, CEILING_PATCH -> "patch";
    };
  }

  private static String words(AccessPlace a) {
    return switch (a.kind()) {
      case LIFTED_BOARDS -> "lifted boards in the " + a.room();
      case WALL_PATCH -> "a patch in the wall of the " + a.room();
      case CEILING_PATCH -> "a patch in the ceiling of the " + a.room();
      case DATA_BOX -> "the low-voltage box in the " + a.room() + ", plate off";
      case REGISTER -> "the register in the " + a.room() + ", past its boot";
    };
  }
}
