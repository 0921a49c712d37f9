package holloway.desk;

import holloway.session.WishesFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Notices when the house file, or one that is read with it, is another one than before. */
final class Watch {
  private final List<Path> files;
  private String known;

  Watch(Path house) {
    Path wishes = WishesFile.beside(house);
    String found = wishes.getFileName().toString().replace(".wishes.yaml", ".found.yaml");
    files = List.of(house, wishes, wishes.resolveSibling(found));
    known = now();
  }

  /** Whether anything is new since the last time that this was asked. */
  boolean isNew() {
    String now = now();
    boolean changed = !now.equals(known);
    known = now;
    return changed;
  }

  private String now() {
    List<String> out = new ArrayList<>();
    for (Path p : files) {
      try {
        out.add(Files.getLastModifiedTime(p) + " " + Files.size(p));
      } catch (IOException e) {
        // A file that is not there is a state like any other.
        out.add("none");
      }
    }
    return String.join("; ", out);
  }
}
