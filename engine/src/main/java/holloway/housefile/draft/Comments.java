package holloway.housefile.draft;

import java.util.ArrayList;
import java.util.List;

/** Lines of a file; comments are folded, and nothing in them can end the comment. */
final class Comments {
  private static final int WIDTH = 100;

  private final StringBuilder text = new StringBuilder();

  void line(String line) {
    text.append(line).append('\n');
  }

  void toFinish(String indent, List<String> remarks) {
    remarks.forEach(r -> comment(indent, DraftText.TO_FINISH, r));
  }

  void comment(String indent, String begin, String words) {
    String open = indent + begin;
    for (String piece : folded(plain(words), WIDTH - open.length())) {
      line(open + piece);
      open = indent + "#   ";
    }
  }

  /** Without line breaks or signs that a YAML file may not hold. */
  static String plain(String words) {
    StringBuilder s = new StringBuilder();
    words
        .codePoints()
        .map(c -> c >= ' ' && c < 127 || Character.isLetterOrDigit(c) ? c : ' ')
        .forEach(s::appendCodePoint);
    return s.toString().strip();
  }

  private static List<String> folded(String words, int width) {
    List<String> out = new ArrayList<>();
    String rest = words;
    while (rest.length() > width) {
      int cut = rest.lastIndexOf(' ', width);
      if (cut <= 0) {
        break;
      }
      out.add(rest.substring(0, cut));
      rest = rest.substring(cut + 1);
    }
    out.add(rest);
    return out;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
