package holloway.pipeline;

import holloway.network.Instance;
import holloway.network.NetworkException;
import holloway.network.NetworkFile;
import holloway.plan.Plan;
import holloway.solve.JointPlanner;
import holloway.solve.Solved;
import java.nio.file.Path;
import java.util.List;

/** Puts a network of a benchmark set to the planner, and the proof to the checker. */
public final class Networks {
  private Networks() {}

  /**
   * What came out, in the costs of the file.
   *
   * @param cost of what was routed
   * @param bound proven, recomputed by the checker
   * @param unrouted how many runs have no route, or no room left
   */
  public record Designed(long cost, long bound, int unrouted) {
    /** Nothing can cost less. */
    public boolean proven() {
      return unrouted == 0 && cost == bound;
    }
  }

  /**
   * Reads, plans and checks.
   *
   * @throws InputTrouble when the file cannot be read or understood
   * @throws IllegalStateException when the checker refuses the proof
   */
  public static Designed design(Path file, Thoroughness thoroughness) {
    Instance in;
    try {
      in = NetworkFile.read(file);
    } catch (NetworkException e) {
      throw new InputTrouble(e.getMessage());
    }
    Solved s =
        JointPlanner.solve(
            in.graph(), in.order(), RealSite.budget(thoroughness), (what, done, of) -> {});
    List<String> faults = Proofs.faults(in.graph(), s.plan(), s.bound(), in.order());
    if (!faults.isEmpty()) {
      throw new IllegalStateException(faults.get(0));
    }
    Plan.Totals t = s.plan().totals();
    return new Designed(
        t.objective() / in.scale(), t.bound() / in.scale(), s.plan().unrouted().size());
  }
}
