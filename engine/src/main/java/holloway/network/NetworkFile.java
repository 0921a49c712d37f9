package holloway.network;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Reads a network by the ending of its name: {@code .stp} or {@code .dow}. */
public final class NetworkFile {
  private NetworkFile() {}

  /**
   * Reads a file.
   *
   * @throws NetworkException when it cannot be read or understood; names the file and the line
   */
  public static Instance read(Path file) {
    String name = String.valueOf(file.getFileName());
    String ending = name.toLowerCase(Locale.ROOT);
    try {
      if (ending.endsWith(".stp")) {
        return SteinerFile.read(lines(file));
      }
      if (ending.endsWith(".dow")) {
        return FlowFile.read(lines(file));
      }
      throw new NetworkException("the name has to end in .stp or .dow");
    } catch (NetworkException e) {
      throw new NetworkException(name + ": " + e.getMessage());
    }
  }

  private static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file, StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      throw new NetworkException(Files.exists(file) ? "cannot be read" : "there is no such file");
    }
  }
}
