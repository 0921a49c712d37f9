package holloway.look;

import java.util.ArrayList;
import java.util.List;

/**
 * What stands in the house, sorted by how it is drawn: solids hide, sheets hide too, veils let
 * through, glows light up what lies behind them, tubes are cables.
 */
public final class Bodies {
  public final Solids solids = new Solids();
  public final Triangles sheets = new Triangles();
  public final Solids veils = new Solids();
  public final Triangles veilSheets = new Triangles();
  public final Solids glows = new Solids();
  public final Triangles glowSheets = new Triangles();
  public final List<Tube> tubes = new ArrayList<>();
}
