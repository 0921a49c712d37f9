package holloway.pack;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Writes the pack of {@code -Dholloway.pack.house} in every form, to be looked at: FOLDER. */
final class WritePacks {
  private WritePacks() {}

  public static void main(String[] args) throws Exception {
    for (Language l : Language.values()) {
      PaperSize paper = l == Language.ENGLISH ? PaperSize.LETTER : PaperSize.A4;
      Path out = Path.of(args[0], l.code() + "-" + paper.word());
      Files.createDirectories(out);
      for (Map.Entry<String, byte[]> f : PackedHouse.files(l, paper).entrySet()) {
        Files.write(out.resolve(f.getKey()), f.getValue());
      }
    }
  }
}
