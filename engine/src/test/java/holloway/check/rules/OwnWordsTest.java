package holloway.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.MemberKind;
import holloway.hollow.HollowKind;
import holloway.limits.OwnRule;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a rule file may name is what houses are made of. */
class OwnWordsTest {
  @Test
  void partsAreMembersAndEachStandsForItsOwn() {
    List<String> members = Arrays.stream(MemberKind.values()).map(MemberKind::word).toList();
    for (OwnRule.Part p : OwnRule.Part.values()) {
      assertTrue(members.containsAll(p.members()), p + " " + p.members());
      p.members().forEach(m -> assertEquals(p, OwnRule.part(m).orElseThrow()));
    }
    assertTrue(OwnRule.part("lining").isEmpty());
  }

  /** Return air is no planned way, and a channel is cut where a rule of its own asks. */
  @Test
  void spacesAreKindsOfHollow() {
    List<String> named = Arrays.stream(OwnRule.Space.values()).map(Enum::name).toList();
    for (HollowKind k : HollowKind.values()) {
      boolean left =
          k == HollowKind.RETURN_AIR || k == HollowKind.CHANNEL || k == HollowKind.OLD_CABLE;
      assertEquals(!left, named.contains(k.name()), k.word());
    }
    assertFalse(named.isEmpty());
  }
}
