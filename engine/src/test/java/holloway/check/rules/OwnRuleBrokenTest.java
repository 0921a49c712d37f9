package holloway.check.rules;

import static holloway.check.rules.Found.of;
import static holloway.check.rules.ToyCase.toy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.hollow.HollowKind;
import holloway.house.Side;
import holloway.house.Thing;
import holloway.limits.OwnRule;
import holloway.request.Job;
import holloway.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Rules of one's own, of each kind: broken, at their limit, and of something else. */
class OwnRuleBrokenTest {
  private static final OwnRule.Words WORDS =
      new OwnRule.Words(
          "local rules of Brookfield: by-law 4.6",
          Severity.LAW,
          Optional.of("Ask the building department."));

  private static List<Finding> find(ToyCase toy) {
    return of("own-rule-broken", toy.find("cat6", 12));
  }

  private static OwnRule bore(long widest, OwnRule.Part... parts) {
    return new OwnRule.Bore(WORDS, Set.of(parts), Length.mm(widest));
  }

  @Test
  void aMemberThatIsNotBored() {
    List<Finding> found = find(toy().own(bore(0, OwnRule.Part.TOP_PLATE)));
    // two plies, each told
    assertEquals(2, found.size());
    Finding f = found.get(0);
    assertEquals(Severity.LAW, f.severity());
    assertTrue(f.broken());
    assertEquals("local rules of Brookfield: by-law 4.6", f.source());
    assertTrue(f.text().endsWith(" Ask the building department."), f.text());
    assertEquals(2, find(toy().own(bore(12, OwnRule.Part.TOP_PLATE))).size());
    assertEquals(List.of(), find(toy().own(bore(13, OwnRule.Part.TOP_PLATE))));
    assertEquals(List.of(), find(toy().own(bore(0, OwnRule.Part.JOIST))));
  }

  private static ToyCase attic(Optional<OwnRule.Listed> unless, Job job) {
    return toy()
        .own(new OwnRule.Room(WORDS, Set.of(OwnRule.Space.ATTIC), unless))
        .job(job)
        .laid("attic", HollowKind.ATTIC, 3000);
  }

  private static Job listed(Job.Listing l) {
    return new Job(Optional.empty(), Optional.empty(), Optional.empty(), Map.of("cat6", l));
  }

  @Test
  void aSpaceThatACableMayNotLieIn() {
    Optional<OwnRule.Listed> riser = Optional.of(OwnRule.Listed.RISER);
    assertEquals(1, find(attic(Optional.empty(), listed(Job.Listing.CMP))).size());
    assertEquals(1, find(attic(riser, Job.UNSTATED)).size());
    assertEquals(1, find(attic(riser, listed(Job.Listing.CM))).size());
    assertEquals(List.of(), find(attic(riser, listed(Job.Listing.CMR))));
    assertEquals(List.of(), find(attic(riser, listed(Job.Listing.CMP))));
    ToyCase elsewhere =
        toy()
            .own(new OwnRule.Room(WORDS, Set.of(OwnRule.Space.ATTIC), Optional.empty()))
            .laid("crawl", HollowKind.CRAWLSPACE, 3000);
    assertEquals(List.of(), find(elsewhere));
  }

  /** The hole's axis stands in the west wall 1000 mm from the south, its foot 2324 mm up. */
  private static ToyCase socket(long south, long height, long by) {
    return toy()
        .own(new OwnRule.KeepOff(WORDS, Set.of("socket"), Length.mm(by)))
        .thing(Thing.Kind.SOCKET, Side.WEST, south, height);
  }

  @Test
  void aThingThatAHoleKeepsOff() {
    assertEquals(List.of(), find(socket(1300, 2324, 300)));
    List<Finding> found = find(socket(1299, 2324, 300));
    assertEquals(1, found.size());
    assertEquals("11-3/4 in (299 mm)", found.get(0).measured());
    // 300 and 400 make 500 mm
    assertEquals(List.of(), find(socket(1300, 1924, 500)));
    assertEquals(1, find(socket(1300, 1925, 500)).size());
    ToyCase light =
        toy()
            .own(new OwnRule.KeepOff(WORDS, Set.of("socket"), Length.mm(300)))
            .thing(Thing.Kind.LIGHT, Side.WEST, 1000, 2324);
    assertEquals(List.of(), find(light));
  }
}
