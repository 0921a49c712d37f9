package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.plan.Plan;

/**
 * What is too long of a ready-made lead, wound up and left where there is room for it.
 *
 * @param at the cabinet if the run has an end there, else the end the run starts from
 * @param leastRadiusMm inside radius it may be wound to, nothing pulling on it: 25 mm for a lead of
 *     two or four fibres indoors (TIA-568, A2-7), ten diameters for other fibre cable (A2-8)
 * @param turns whole turns of a coil 300 mm across (that size is our own choice: it hangs on a hook
 *     and is well above the least)
 */
public record Coil(String at, double leastRadiusMm, int turns) {
  private static final double ACROSS_M = 0.3;
  private static final double INDOOR_MM = 25;

  public static Coil of(Plan.PlannedRun run, CutLength cut) {
    Cable cable = Cable.get(run.cable());
    String at = run.to().equals("cabinet") ? run.to() : run.from();
    double radius = cable.outdoor() ? 10 * cable.outside().toMm() : INDOOR_MM;
    int turns = (int) Math.floor(cut.surplusM() / (Math.PI * ACROSS_M));
    return new Coil(at, radius, turns);
  }
}
