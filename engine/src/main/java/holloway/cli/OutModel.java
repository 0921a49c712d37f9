package holloway.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes one model file, whole or not at all; replaces a model of ours and nothing else. */
final class OutModel {
  private static final String OURS = "\"generator\":\"Holloway\"";
  private static final int HEAD = 200;

  private final Path file;

  OutModel(Path file) {
    this.file = file.toAbsolutePath().normalize();
  }

  /**
   * @throws CommandTrouble when the name is not a model's, or something else is there
   */
  void refuseForeign() {
    if (!file.getFileName().toString().endsWith(".glb")) {
      throw new CommandTrouble("--out " + file.getFileName() + " must end in .glb");
    }
    if (Files.exists(file) && !isOurs()) {
      throw new CommandTrouble(
          "--out %s is there and was not written by Holloway; take it away or give another name"
              .formatted(file.getFileName()));
    }
  }

  private boolean isOurs() {
    if (!Files.isRegularFile(file)) {
      return false;
    }
    try (InputStream in = Files.newInputStream(file)) {
      String head = new String(in.readNBytes(HEAD), StandardCharsets.ISO_8859_1);
      return head.startsWith("glTF") && head.contains(OURS);
    } catch (IOException e) {
      return false;
    }
  }

  /**
   * @throws CommandTrouble when it cannot be written; what was there before is still there
   */
  void write(byte[] bytes) {
    Path folder = null;
    Path fresh = null;
    try {
      Files.createDirectories(file.getParent());
      folder = Files.createTempDirectory(file.getParent(), ".holloway-");
      fresh = Files.write(folder.resolve("new.glb"), bytes);
      Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      throw new CommandTrouble(
          "--out %s: nothing was written (%s)"
              .formatted(file.getFileName(), e.getClass().getSimpleName()));
    } finally {
      remove(fresh);
      remove(folder);
    }
  }

  private static void remove(Path temporary) {
    try {
      if (temporary != null) {
        Files.deleteIfExists(temporary);
      }
    } catch (IOException e) {
      // A left-over temporary file harms nobody; the answer is more important.
      return;
    }
  }
}
