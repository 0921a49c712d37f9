package holloway.pack;

import holloway.report.Sheet;
import holloway.schedule.RunProof;
import holloway.schedule.WorkSchedule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What each run is tested for, once for all that are tested alike. */
final class TestFacts {
  private TestFacts() {}

  static List<Map<String, Object>> of(Sheet sheet, WorkSchedule work) {
    Map<String, String> texts = Language.ENGLISH.texts();
    CableNames cables = new CableNames(sheet);
    Map<String, List<Map<String, Object>>> alike = new LinkedHashMap<>();
    for (RunProof p : work.tests()) {
      Map<String, Object> run = new LinkedHashMap<>(cables.of(List.of(p.run())));
      run.put("id", "step/test/" + p.run());
      alike.computeIfAbsent(texts.get(key(p)), k -> new ArrayList<>()).add(run);
    }
    List<Map<String, Object>> out = new ArrayList<>();
    alike.forEach((what, runs) -> out.add(Map.of("what", what, "runs", runs)));
    return out;
  }

  private static String key(RunProof p) {
    Set<RunProof.Check> checks = Set.copyOf(p.checks());
    if (checks.contains(RunProof.Check.LIGHT_THROUGH)) {
      return "test-fibre";
    }
    return checks.contains(RunProof.Check.WIRE_MAP) ? "test-copper" : "test-coax";
  }
}
