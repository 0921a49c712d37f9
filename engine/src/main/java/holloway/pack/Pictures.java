package holloway.pack;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Pictures of a planned house, where something here can draw them. A pack is whole without them: a
 * machine without a graphics driver gives none and says why.
 */
public interface Pictures extends AutoCloseable {
  /**
   * One picture on a light ground.
   *
   * @param of {@code level}, {@code run}, {@code hole} or {@code slice}
   * @param name of the level, id of the run, label or id of the hole, or where a slice is ({@code
   *     west 12 ft}, {@code south 3 m}, {@code floor 4 ft})
   * @param width in pixels, from 320; {@code height} from 240
   * @param words puts a text of the picture into its language; a text in that language it gives
   *     back
   * @return a PNG file; empty when there is no such thing in the house, or when nothing can draw
   */
  Optional<byte[]> png(String of, String name, int width, int height, UnaryOperator<String> words);

  /** Why there are no pictures, as a sentence for the person; empty while there are. */
  String why();

  /** Names of the levels that can be drawn, from the ground up; empty when nothing can draw. */
  List<String> levels();

  @Override
  void close();

  /** For a program that draws no pictures at all. */
  static Pictures none(String why) {
    return new Pictures() {
      @Override
      public Optional<byte[]> png(
          String of, String name, int width, int height, UnaryOperator<String> words) {
        return Optional.empty();
      }

      @Override
      public String why() {
        return why;
      }

      @Override
      public List<String> levels() {
        return List.of();
      }

      @Override
      public void close() {
        // Nothing was opened.
      }
    };
  }
}
