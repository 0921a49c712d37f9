package holloway.housefile;

import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Timber;
import holloway.house.WallSpot;
import holloway.units.Length;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * One map being written. What was assumed is left out, so that it is assumed again when the text is
 * read; everything else is written to the nanometre.
 */
final class Words {
  private static final int DIGITS_OF_NM_IN_MM = 6;

  private final Map<String, Object> map = new LinkedHashMap<>();

  Map<String, Object> map() {
    return map;
  }

  Words put(String key, Object value) {
    map.put(key, value);
    return this;
  }

  Words word(String key, Enum<?> value) {
    return put(key, Shape.word(value));
  }

  Words yesNo(String key, boolean value) {
    return put(key, value ? "yes" : "no");
  }

  /** Empty values are left out. */
  <T> Words maybe(String key, Optional<T> value, Function<T, ?> write) {
    value.ifPresent(v -> map.put(key, write.apply(v)));
    return this;
  }

  /** Left out if assumed. */
  <T> Words fact(String key, Optional<Fact<T>> fact, Function<T, ?> write) {
    return maybe(key, fact.filter(f -> !f.isAssumed()), f -> write.apply(f.value()));
  }

  Words length(String key, Fact<Length> fact) {
    return length(key, Optional.of(fact));
  }

  Words length(String key, Optional<Fact<Length>> fact) {
    return maybe(key, fact.filter(f -> !f.isAssumed()), Words::of);
  }

  Words timber(String key, Optional<Fact<Timber>> fact) {
    return fact(key, fact, Timber::name);
  }

  /** {@code in}, {@code wall}, {@code from} and {@code height}. */
  Words spot(WallSpot at) {
    String number = at.face().ordinal() == 1 ? "" : " " + at.face().ordinal();
    return put("in", at.face().room())
        .put("wall", at.face().side().word() + number)
        .put("from", of(at.along()))
        .length("height", at.height());
  }

  static String of(Length l) {
    String mm = BigDecimal.valueOf(l.nm(), DIGITS_OF_NM_IN_MM).stripTrailingZeros().toPlainString();
    return mm + " mm";
  }

  static String of(Fact<Length> f) {
    boolean usual = f.spread().equals(Fact.TAPE);
    return of(f.value()) + (usual ? "" : " +- " + of(f.spread()));
  }

  static String of(Along a) {
    return a.from().word() + " " + of(a.distance());
  }

  static String of(FaceRef f) {
    return f.toString();
  }

  static List<String> of(CeilingSpot s) {
    return List.of(of(s.eastWest()), of(s.northSouth()));
  }

  static String size(Length eastWest, Length northSouth) {
    return of(eastWest) + " x " + of(northSouth);
  }

  static String size(Fact<Length> eastWest, Fact<Length> northSouth) {
    return of(eastWest) + " x " + of(northSouth);
  }
}
