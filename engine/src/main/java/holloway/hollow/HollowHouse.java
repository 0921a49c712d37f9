package holloway.hollow;

import holloway.framing.Framed;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The house as hollows, crossings and stands; knows no request. Lists sorted by id. */
public final class HollowHouse {
  private final Framed framed;
  private final List<Hollow> hollows;
  private final List<Site> sites;
  private final Map<String, Hollow> hollowsById;
  private final Map<String, Site> sitesById;
  private final List<Stand> stands;
  private final List<AccessPlace> accesses;
  private final List<Refused> refused;

  public HollowHouse(
      Framed framed,
      List<Hollow> hollows,
      List<Site> sites,
      List<Stand> stands,
      List<AccessPlace> accesses,
      List<Refused> refused) {
    this.framed = framed;
    Map<String, Hollow> byId = new TreeMap<>();
    hollows.forEach(h -> byId.put(h.id(), h));
    this.hollows = List.copyOf(byId.values());
    this.hollowsById = new HashMap<>(byId);
    Map<String, Site> siteById = new TreeMap<>();
    sites.forEach(s -> siteById.put(s.id(), s));
    this.sites = List.copyOf(siteById.values());
    this.sitesById = new HashMap<>(siteById);
    this.stands = List.copyOf(stands);
    this.accesses = List.copyOf(accesses);
    this.refused = List.copyOf(refused);
  }

  public Framed framed() {
    return framed;
  }

  public List<Hollow> hollows() {
    return hollows;
  }

  public List<Site> sites() {
    return sites;
  }

  public List<Stand> stands() {
    return stands;
  }

  /** Where blind hollows could be opened, in the order found. */
  public List<AccessPlace> accesses() {
    return accesses;
  }

  /** A house with four parts only, for callers that know no accesses. */
  public HollowHouse(
      Framed framed,
      List<Hollow> hollows,
      List<Site> sites,
      List<Stand> stands,
      List<Refused> refused) {
    this(framed, hollows, sites, stands, List.of(), refused);
  }

  public List<Refused> refused() {
    return refused;
  }

  public java.util.Optional<Hollow> findHollow(String id) {
    return java.util.Optional.ofNullable(hollowsById.get(id));
  }

  public java.util.Optional<Site> findSite(String id) {
    return java.util.Optional.ofNullable(sitesById.get(id));
  }
}
