package holloway.support;

import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.Side;
import holloway.house.Timber;
import holloway.house.WallRef;
import holloway.house.WallSpec;
import holloway.house.Where;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a test says of one wall. */
public final class WallDraft {
  private final Optional<WallRef> ref;
  private Optional<String> name = Optional.empty();
  private Optional<WallSpec.Kind> kind = Optional.empty();
  private Optional<Fact<Timber>> studs = Optional.empty();
  private Optional<Fact<Length>> every = Optional.empty();
  private Optional<Along> studsFrom = Optional.empty();
  private Optional<Fact<Length>> thickness = Optional.empty();
  private Optional<Fact<Boolean>> bearing = Optional.empty();
  private Optional<Fact<Fill>> fill = Optional.empty();
  private Optional<Boolean> singleTopPlate = Optional.empty();
  private final List<Fact<Length>> blocksAt = new ArrayList<>();
  private Where where = Where.NOWHERE;

  private WallDraft(Optional<WallRef> ref) {
    this.ref = ref;
  }

  /** A default that states nothing. */
  public static WallDraft usual() {
    return new WallDraft(Optional.empty());
  }

  public static WallDraft between(String one, String other) {
    return between(one, other, 1);
  }

  public static WallDraft between(String one, String other, int ordinal) {
    return new WallDraft(
        Optional.of(
            new WallRef(
                Optional.of(new WallRef.Between(one, other, ordinal)),
                Optional.empty(),
                Where.NOWHERE)));
  }

  public static WallDraft behind(String room, Side side) {
    FaceRef face = new FaceRef(room, side, 1, Where.NOWHERE);
    return new WallDraft(
        Optional.of(new WallRef(Optional.empty(), Optional.of(face), Where.NOWHERE)));
  }

  public WallDraft named(String n) {
    name = Optional.of(n);
    return this;
  }

  public WallDraft kind(WallSpec.Kind k) {
    kind = Optional.of(k);
    return this;
  }

  public WallDraft studs(Timber t) {
    studs = Optional.of(Fact.stated(t, where));
    return this;
  }

  public WallDraft every(Length l) {
    every = Optional.of(Fact.stated(l, where));
    return this;
  }

  public WallDraft studsFrom(Side end, Length distance) {
    studsFrom = Optional.of(new Along(end, Fact.measured(distance, where)));
    return this;
  }

  public WallDraft thickness(Length l) {
    thickness = Optional.of(Fact.measured(l, where));
    return this;
  }

  public WallDraft bearing(boolean b) {
    bearing = Optional.of(Fact.stated(b, where));
    return this;
  }

  public WallDraft fill(Fill f) {
    fill = Optional.of(Fact.stated(f, where));
    return this;
  }

  public WallDraft singleTopPlate() {
    singleTopPlate = Optional.of(true);
    return this;
  }

  public WallDraft blockAt(Length height) {
    blocksAt.add(Fact.measured(height, where));
    return this;
  }

  WallDraft at(Where line) {
    where = line;
    return this;
  }

  public WallSpec build() {
    return new WallSpec(
        ref,
        name,
        kind,
        studs,
        every,
        studsFrom,
        thickness,
        bearing,
        fill,
        Optional.empty(),
        Optional.empty(),
        singleTopPlate,
        blocksAt,
        where);
  }
}
