package holloway.desk;

import holloway.look.Area;
import holloway.look.Dash;
import holloway.look.Panels;
import java.util.ArrayList;
import java.util.List;

/** Panels that write down what is said, and press what they are told to, once. */
final class FakePanels implements Panels {
  final List<String> said = new ArrayList<>();
  private int scrolled;
  private String press = "";

  /** The next frame presses the button or line that begins so. */
  FakePanels pressing(String text) {
    press = text;
    return this;
  }

  String all() {
    return String.join("\n", said);
  }

  private boolean answer(String text) {
    said.add(text);
    if (!press.isEmpty() && text.startsWith(press)) {
      press = "";
      return true;
    }
    return false;
  }

  @Override
  public void scroll(int lines) {
    scrolled += lines;
  }

  /** Lines that panels were moved down in all. */
  int scrolled() {
    return scrolled;
  }

  @Override
  public void begin(String title, Area at) {
    said.add("[" + title + "]");
  }

  @Override
  public void end() {}

  @Override
  public void heading(String text) {
    said.add(text);
  }

  @Override
  public void words(String text) {
    said.add(text);
  }

  @Override
  public void quiet(String text) {
    said.add(text);
  }

  @Override
  public void pair(String left, String right) {
    said.add(left + ": " + right);
  }

  @Override
  public boolean button(String text, boolean on) {
    return answer(text);
  }

  @Override
  public void row(int parts) {}

  @Override
  public boolean run(String text, String right, int colour, Dash dash, boolean chosen) {
    return answer(text);
  }

  @Override
  public boolean item(String text, boolean chosen) {
    return answer(text);
  }

  @Override
  public void gap() {}
}
