package holloway.report;

import java.util.ArrayList;
import java.util.List;

/** Text of 80 columns: titles, wrapped paragraphs with a hanging indent, columns. */
class Page {
  static final int WIDTH = 80;
  private final StringBuilder out = new StringBuilder();
  private final Ink ink;

  Page(Ink ink) {
    this.ink = ink;
  }

  /** A section's title, with an empty line before it unless the page is empty. */
  void title(String text) {
    blank();
    out.append(ink.title(text)).append('\n');
  }

  void blank() {
    if (out.length() > 0) {
      out.append('\n');
    }
  }

  /** Text wrapped at blanks; the first line after {@code lead}, the others indented as wide. */
  void put(String lead, String text) {
    put(lead, lead.length(), text);
  }

  /** As {@link #put(String, String)} with the other lines indented by {@code hang} columns. */
  void put(String lead, int hang, String text) {
    String before = lead;
    for (String line : wrap(text, WIDTH - Math.max(lead.length(), hang))) {
      out.append((before + line).stripTrailing()).append('\n');
      before = " ".repeat(hang);
    }
  }

  /** A line as it is. */
  void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }

  String text() {
    return out.toString();
  }

  static List<String> wrap(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+")) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
