package holloway.step;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A STEP file: its header, and those entities of its data that the reader was asked to keep. */
public final class StepFile {
  private final List<StepEntity> header;
  private final Map<Long, StepEntity> byId = new LinkedHashMap<>();
  private final Map<String, List<StepEntity>> byType = new TreeMap<>();

  StepFile(List<StepEntity> header) {
    this.header = List.copyOf(header);
  }

  /** Returns what had that number before, if anything; then nothing is changed. */
  Optional<StepEntity> add(StepEntity e) {
    StepEntity before = byId.putIfAbsent(e.id(), e);
    if (before == null) {
      e.parts().forEach(p -> byType.computeIfAbsent(p.type(), k -> new ArrayList<>()).add(e));
    }
    return Optional.ofNullable(before);
  }

  public int size() {
    return byId.size();
  }

  public Optional<StepEntity> find(long id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** All entities of a type (in capitals), in the order of the file. */
  public List<StepEntity> listOf(String type) {
    return List.copyOf(byType.getOrDefault(type, List.of()));
  }

  /** An entity of the header, such as {@code FILE_SCHEMA}. */
  public Optional<StepEntity> findHeader(String type) {
    return header.stream().filter(e -> e.type().equals(type)).findFirst();
  }
}
