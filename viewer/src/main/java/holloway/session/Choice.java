package holloway.session;

/** What the person has picked out; one thing at most. */
public sealed interface Choice {
  record None() implements Choice {}

  record Run(String id) implements Choice {}

  /** A hole, by the id of its crossing. */
  record Hole(String id) implements Choice {}

  /** A space, by its id. */
  record Hollow(String id) implements Choice {}

  /** A solid piece of the house, by its id. */
  record Member(String id) implements Choice {}

  record Outlet(String name) implements Choice {}

  /** A finding, by its number in the plan's list. */
  record Finding(int number) implements Choice {}

  Choice NONE = new None();

  /** The id or name of what is picked out; empty when nothing is. */
  default String name() {
    if (this instanceof Run r) {
      return r.id();
    }
    if (this instanceof Hole h) {
      return h.id();
    }
    if (this instanceof Hollow h) {
      return h.id();
    }
    if (this instanceof Member m) {
      return m.id();
    }
    if (this instanceof Outlet o) {
      return o.name();
    }
    return this instanceof Finding f ? String.valueOf(f.number()) : "";
  }

  /** In one word what kind of thing it is. */
  default String kind() {
    return getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
  }
}
