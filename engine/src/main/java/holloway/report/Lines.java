package holloway.report;

import java.util.ArrayList;
import java.util.List;

/** What a section says, entry by entry and not wrapped: for a page that lays it out itself. */
final class Lines extends Page {
  private final List<String> entries = new ArrayList<>();

  Lines() {
    super(Ink.PLAIN);
  }

  @Override
  void title(String text) {}

  @Override
  void put(String lead, int hang, String text) {
    String mark = lead.strip();
    entries.add(mark.isEmpty() || mark.equals("-") ? text.strip() : mark + " " + text.strip());
  }

  @Override
  void line(String text) {
    entries.add(text.strip());
  }

  List<String> entries() {
    return List.copyOf(entries);
  }
}
