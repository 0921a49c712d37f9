package holloway.look;

/** How wide words are in the type that the picture is set in. */
@FunctionalInterface
public interface Measure {
  /** Pixels from the beginning to the end of a line of words of a size, as in {@link Mark.Word}. */
  float width(String text, float size, boolean bold);
}
