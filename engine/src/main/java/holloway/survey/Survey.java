package holloway.survey;

import holloway.finding.Outcome;
import holloway.house.Assumption;
import holloway.house.House;
import java.util.List;
import java.util.TreeSet;

/**
 * The doorway: from tape measures to positions.
 *
 * <p>Horizontal positions are one weighted least-squares network per axis, heights a third; walls
 * fall out of the gaps. Loops that do not close are reported and the plan goes on.
 */
public final class Survey {
  private Survey() {}

  /**
   * @throws SurveyException when the house cannot be placed; it lists every problem found
   */
  public static Outcome<Placed> of(House house) {
    Problems problems = new Problems();
    Texts texts = Texts.of(house);
    Columns columns = LevelOrder.of(house, problems);
    Specs specs = new Specs(house);
    FloorPlan plan = new FloorPlan(house, columns, specs, texts, problems);
    plan.adjust();
    Storeys storeys = new Storeys(house, columns, texts);
    Closures closures = plan.closures().and(storeys.adjust());
    Refusals.add(closures, texts, problems);
    Gaps gaps = plan.gaps();
    Notes notes = new Notes(gaps, texts);
    closures.lone().forEach(notes::standsOut);
    List<PlacedRoom> rooms = plan.rooms(storeys);
    Extent.check(rooms, problems);
    new Overlaps(gaps, columns, texts, problems).check(rooms);
    StairCheck.check(house, columns, rooms, problems);
    BeamCheck.check(house, rooms, texts, problems);
    problems.throwIfAny();

    LevelWalls walls =
        new LevelWalls(house, specs, storeys, plan.spreads(), gaps, texts, notes, problems);
    Spaces spaces = new Spaces(house, rooms);
    List<PlacedLevel> levels = walls.build(columns, rooms, spaces);
    problems.throwIfAny();
    FloorCheck.check(levels, rooms, problems);
    List<Wall> built = KneeWalls.lowered(house, walls.walls());
    WallFinder finder = new WallFinder(rooms, built);
    List<Wall> all = new OnWalls(house, finder, rooms, built, texts, problems).place();
    problems.throwIfAny();
    TreeSet<String> assumed = new TreeSet<>(plan.assumed());
    assumed.addAll(storeys.assumed());
    assumed.addAll(walls.assumed());
    all.forEach(w -> Assumed.of(w, house.layout(), texts, assumed));
    Assumption.gathered(UsedDefaults.of(house, all))
        .forEach(a -> assumed.add(Assumption.LEAD + a.says()));
    Placed placed =
        new Placed(
            house,
            levels,
            rooms,
            all,
            closures.misclosures(),
            spaces.list(levels),
            List.copyOf(assumed),
            closures.shared());
    PorchCheck.check(placed, texts, problems);
    problems.throwIfAny();
    return new Outcome<>(placed, notes.findings());
  }
}
