package holloway.request;

import holloway.catalog.PinOut;
import holloway.catalog.PriceList;
import holloway.house.WallSpot;
import holloway.house.Where;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Everything wanted of one house. Runs are sorted by id. */
public record Request(
    Cabinet cabinet,
    List<Outlet> outlets,
    List<Run> runs,
    Wishes wishes,
    Effort effort,
    PriceList prices,
    Shop shop) {
  /**
   * What does not change where cable goes.
   *
   * @param pinOut which colours go to which pins, the same at both ends of every cable
   * @param priceFile as the house file names it
   * @param have keys of shop items that are in the workshop already
   * @param job what the rules ask of the work and of the cable
   */
  public record Shop(PinOut pinOut, Optional<String> priceFile, Set<String> have, Job job) {
    public static final Shop USUAL =
        new Shop(PinOut.USUAL, Optional.empty(), Set.of(), Job.UNSTATED);

    public Shop {
      have = Set.copyOf(have);
    }
  }

  /** With the usual pins. */
  public Request(
      Cabinet cabinet,
      List<Outlet> outlets,
      List<Run> runs,
      Wishes wishes,
      Effort effort,
      PriceList prices) {
    this(cabinet, outlets, runs, wishes, effort, prices, Shop.USUAL);
  }

  /** Without a price file. */
  public Request(
      Cabinet cabinet, List<Outlet> outlets, List<Run> runs, Wishes wishes, Effort effort) {
    this(cabinet, outlets, runs, wishes, effort, PriceList.NONE);
  }

  /**
   * Where the network gear stands: its back centre on a face.
   *
   * @param others places where it could stand instead; a plan uses {@code at}
   */
  public record Cabinet(WallSpot at, Where where, List<WallSpot> others) {
    public Cabinet {
      others = List.copyOf(others);
    }

    /** In one place. */
    public Cabinet(WallSpot at, Where where) {
      this(at, where, List.of());
    }
  }

  public Request {
    outlets = List.copyOf(outlets);
    runs = List.copyOf(runs);
  }

  /** The same wants from a cabinet that stands somewhere else. */
  public Request with(Cabinet other) {
    return new Request(other, outlets, runs, wishes, effort, prices, shop);
  }

  /** The same wants with a shop's lengths and prices. */
  public Request with(PriceList list) {
    return new Request(cabinet, outlets, runs, wishes, effort, list, shop);
  }

  /** The same wants of a job of which more is known. */
  public Request with(Job job) {
    Shop other = new Shop(shop.pinOut(), shop.priceFile(), shop.have(), job);
    return new Request(cabinet, outlets, runs, wishes, effort, prices, other);
  }

  /** The same wants with other wishes. */
  public Request with(Wishes other) {
    return new Request(cabinet, outlets, runs, other, effort, prices, shop);
  }

  public Outlet getOutlet(String name) {
    return outlets.stream()
        .filter(o -> o.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no outlet " + name));
  }
}
