package holloway.request;

import holloway.house.Where;
import java.util.List;

/**
 * A place where cables end. {@code cables} are cable kinds of the catalog, one each; {@code spare}
 * more of the first kind are pulled for later.
 *
 * @param spots the wanted spot first, then alternatives
 * @param feed the provider's box: its cables are outdoor cables to the cabinet
 */
public record Outlet(
    String name,
    List<Spot> spots,
    List<String> cables,
    int spare,
    boolean feed,
    String power,
    Where where) {
  public Outlet {
    spots = List.copyOf(spots);
    cables = List.copyOf(cables);
  }
}
