package holloway.desk;

import holloway.pipeline.LiveHouse;
import holloway.session.WishesFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The files of a desk: the house file is looked at for changes, what the person wants is written
 * beside it. What came of it is said on the table.
 */
final class HouseFiles {
  private static final long LOOK_EVERY = 300_000_000L;

  private final Path file;
  private final Table table;
  private final Watch watch;
  private String lastSaved = "";
  private long looked;

  HouseFiles(Path file, Table table) {
    this.file = file;
    this.table = table;
    this.watch = new Watch(file);
  }

  /**
   * Opens the house again where its file is new.
   *
   * @param now nanoseconds that only grow; a file is not looked at more often than it is of use
   */
  void look(long now) {
    if (now - looked <= LOOK_EVERY) {
      return;
    }
    looked = now;
    if (watch.isNew()) {
      LiveHouse as = table.work.filesHouse();
      table.work.reopen(() -> as.reopened(file), isSaved());
      table.say("the file was changed: read again");
    }
  }

  /** Whether what was changed stands in the wishes file already. */
  private boolean isSaved() {
    try {
      Path to = WishesFile.beside(file);
      return Files.exists(to) && Files.readString(to).equals(lastSaved);
    } catch (IOException e) {
      return false;
    }
  }

  /** Writes what is wanted, once it is known that it can be and what comes of it. */
  void save() {
    table.take();
    if (table.work.isPlanning()) {
      table.say("not saved: this plan is not judged yet; save again when it is");
      return;
    }
    Path to = WishesFile.beside(file);
    try {
      String existing = Files.exists(to) ? Files.readString(to) : "";
      String text = WishesFile.text(existing, table.work.asInFiles(), table.work.wanted());
      if (text.equals(existing)) {
        table.say("nothing to save");
        return;
      }
      WishesFile.write(to, text);
      lastSaved = text;
      // Our own writing is no reason to read the house again.
      watch.isNew();
      table.say("saved in " + to.getFileName());
    } catch (IOException | IllegalArgumentException e) {
      table.say("not saved: " + e.getMessage());
    }
  }
}
