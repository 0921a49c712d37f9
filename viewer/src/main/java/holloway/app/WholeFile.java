package holloway.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;

/** Writes one picture: whole or not at all, and never over a file that is not a picture. */
final class WholeFile {
  private static final byte[] PNG = {(byte) 137, 'P', 'N', 'G'};

  private WholeFile() {}

  /**
   * Says what is wrong with a place to write to; empty when nothing is.
   *
   * @throws IOException when what is there cannot be read
   */
  static String trouble(Path to) throws IOException {
    Path folder = to.toAbsolutePath().getParent();
    if (Files.isDirectory(to)) {
      return "it is a folder";
    }
    if (folder == null || !Files.isDirectory(folder)) {
      return "there is no such folder";
    }
    if (Files.exists(to) && !isPng(to)) {
      return "a file is there that is no picture; take it away or name another";
    }
    return "";
  }

  private static boolean isPng(Path p) throws IOException {
    if (!Files.isRegularFile(p)) {
      return false;
    }
    try (var in = Files.newInputStream(p)) {
      return Arrays.equals(in.readNBytes(PNG.length), PNG);
    }
  }

  static void write(Path to, byte[] bytes) throws IOException {
    Path folder = to.toAbsolutePath().getParent();
    Path fresh = Files.createTempFile(folder, ".holloway-", ".png");
    try {
      Files.write(fresh, bytes);
      Files.move(fresh, to, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }
}
