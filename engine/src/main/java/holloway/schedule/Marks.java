package holloway.schedule;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.CRC32;

/** Short marks that make an id tell its content: the same words, the same mark. */
final class Marks {
  private Marks() {}

  static String of(List<String> words) {
    CRC32 crc = new CRC32();
    for (String w : words) {
      crc.update((w + '\n').getBytes(StandardCharsets.UTF_8));
    }
    return "%08x".formatted(crc.getValue());
  }
}
