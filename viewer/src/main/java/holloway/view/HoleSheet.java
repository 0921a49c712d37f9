package holloway.view;

import java.util.List;
import org.joml.Vector3fc;

/**
 * What is told and drawn of one hole.
 *
 * @param what kind and size, in words
 * @param a where the drill stands, {@code b} where the bit comes out
 * @param from the place the person stands, {@code out} the space the bit comes out in
 * @param between ids of the hollows it joins
 */
public record HoleSheet(
    Pin pin,
    String what,
    Vector3fc a,
    Vector3fc b,
    List<TapeMark> tapesA,
    List<TapeMark> tapesB,
    String from,
    String out,
    List<String> between,
    List<Line> lines) {
  /** A title and what stands under it. */
  public record Line(String title, List<String> words) {
    public Line {
      words = List.copyOf(words);
    }
  }

  public HoleSheet {
    tapesA = List.copyOf(tapesA);
    tapesB = List.copyOf(tapesB);
    between = List.copyOf(between);
    lines = List.copyOf(lines);
  }
}
