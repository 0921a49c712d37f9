package holloway.look;

import java.util.List;

/** One whole picture: panes side by side, and the flat marks over them in the order drawn. */
public record Sheet(int width, int height, Theme theme, List<Pane> panes, List<Mark> over) {
  public Sheet {
    panes = List.copyOf(panes);
    over = List.copyOf(over);
    if (width < 1 || height < 1) {
      throw new IllegalArgumentException("a picture of " + width + " x " + height + " pixels");
    }
  }
}
