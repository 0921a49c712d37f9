package holloway.limits;

import holloway.units.Length;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;

/** The search for the widest bit that a rule lets through. */
final class BitLadder {
  /** A span for asking: only the ratio of place to span counts in any pack. */
  private static final Length SPAN = Length.mm(4000);

  /** Between a quarter and two fifths of the span: lawful along in every pack (C1-3, C4-1). */
  private static final Length ALONG = Length.mm(1300);

  private BitLadder() {}

  static OptionalInt widest(List<Integer> bitsMm, Predicate<Length> lawful) {
    return bitsMm.stream()
        .mapToInt(Integer::intValue)
        .filter(bit -> lawful.test(Length.mm((long) bit)))
        .max();
  }

  static boolean joist(RulePack pack, Length depth, MemberMake make, Length bit) {
    Length edge = RulePack.centredEdge(depth, bit);
    return pack.joistBore(depth, bit, edge, edge, ALONG, SPAN, make).allowed();
  }
}
