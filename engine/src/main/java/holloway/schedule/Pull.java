package holloway.schedule;

import java.util.List;

/**
 * Cables drawn or laid together through one stretch, in one direction, in one go. Several pulls can
 * follow one another through the same stretch when cables come out of one box.
 *
 * @param id the same for the same stretch and the same cables, also in a plan made again
 * @param feed {@code fish} where nobody sees the cable, {@code hand} where hands go along
 * @param hollows ids of the hollows it passes, in order
 * @param holes ids of the plan's holes it passes, in order
 * @param from where the cable is fed in; {@code to} where it is caught
 * @param metres of the longest cable's way through this stretch
 * @param stringM metres of string left behind with the last pull of a blind stretch, 0 otherwise
 */
public record Pull(
    String id,
    String feed,
    List<String> hollows,
    List<String> holes,
    WorkPlace from,
    WorkPlace to,
    List<Strand> strands,
    double metres,
    double stringM,
    double newtons,
    double mostNewtons,
    int quarterTurns) {

  /**
   * One cable of a pull.
   *
   * @param stretch number of the stretch along its run, from 0
   * @param box where it is drawn from; a ready-made lead is its own
   * @param readyMade ends are on; the end with the pull head goes first
   * @param firstM what has gone in by then: metres of its way up to where it is caught here
   * @param cutM where the cable is cut, metres from its leading end, slack of both ends included
   * @param last this stretch ends at the cable's far end
   * @param newtons pull on this cable at the end of the stretch, from the capstan equation
   * @param mostNewtons what it bears
   * @param bendMm least inside bend radius while it is pulled
   */
  public record Strand(
      String run,
      int stretch,
      String cable,
      String box,
      boolean readyMade,
      double firstM,
      double cutM,
      boolean last,
      double newtons,
      double mostNewtons,
      double bendMm) {}

  public Pull {
    hollows = List.copyOf(hollows);
    holes = List.copyOf(holes);
    strands = List.copyOf(strands);
  }

  /** True when no cable is pulled harder than it bears. */
  public boolean gentle() {
    return strands.stream().allMatch(s -> s.newtons() <= s.mostNewtons());
  }

  /** Ids of the runs, in the order of their strands. */
  public List<String> runs() {
    return strands.stream().map(Strand::run).toList();
  }
}
