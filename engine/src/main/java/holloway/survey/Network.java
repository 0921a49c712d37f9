package holloway.survey;

import java.util.ArrayList;
import java.util.List;

/**
 * The positions along one axis and what was observed between them. Start values come from walking
 * through the placings; the adjustment finds small corrections to them, so a house without
 * redundant measurements keeps every stated length exactly.
 */
final class Network {
  private final Axis axis;
  private final List<String> names = new ArrayList<>();
  private final List<Long> start = new ArrayList<>();
  private final List<Observation> observations = new ArrayList<>();

  Network(Axis axis) {
    this.axis = axis;
  }

  Axis axis() {
    return axis;
  }

  int addUnknown(String name) {
    names.add(name);
    start.add(0L);
    return names.size() - 1;
  }

  int size() {
    return names.size();
  }

  String name(int unknown) {
    return names.get(unknown);
  }

  void start(int unknown, long position) {
    start.set(unknown, position);
  }

  long start(int unknown) {
    return start.get(unknown);
  }

  void observe(int from, int to, long value, long spread, Label label) {
    observations.add(new Observation(from, to, value, Math.max(1, spread), label));
  }

  /** The same unknowns without one observation (without one of equals). */
  Network without(Observation left) {
    Network rest = new Network(axis);
    rest.names.addAll(names);
    rest.start.addAll(start);
    rest.observations.addAll(observations);
    rest.observations.remove(left);
    return rest;
  }

  boolean isObserved(int a, int b) {
    return observations.stream()
        .anyMatch(o -> o.from() == a && o.to() == b || o.from() == b && o.to() == a);
  }

  /** In an order that does not depend on how they were found. */
  List<Observation> observations() {
    return observations.stream().sorted(Observation.ORDER).toList();
  }

  /** What the observation says less what the start values say, nanometres. */
  long gap(Observation o) {
    return o.value() - (start.get(o.to()) - start.get(o.from()));
  }
}
