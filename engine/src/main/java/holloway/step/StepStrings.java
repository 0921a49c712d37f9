package holloway.step;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/**
 * Decodes what stands between the quotes of a string: {@code \X\E9}, {@code \X2\00E900FC\X0\},
 * {@code \X4\0001F600\X0\}, {@code \S\i}, {@code \P..\} (ISO 10303-21, 6.4.3) and a doubled
 * backslash. What is no such directive stays as it is: programs are known to write single
 * backslashes.
 */
final class StepStrings {
  private final String raw;
  private final StringBuilder out = new StringBuilder();
  private int at;

  private StepStrings(String raw) {
    this.raw = raw;
  }

  static String decode(byte[] bytes) {
    String raw = text(bytes);
    return raw.indexOf('\\') < 0 ? raw : new StepStrings(raw).decoded();
  }

  /** UTF-8 as newer files have it, else the Latin letters of the first edition. */
  private static String text(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      return new String(bytes, StandardCharsets.ISO_8859_1);
    }
  }

  private String decoded() {
    while (at < raw.length()) {
      if (raw.charAt(at) != '\\' || !directive()) {
        out.append(raw.charAt(at++));
      }
    }
    return out.toString();
  }

  private boolean directive() {
    if (raw.startsWith("\\\\", at)) {
      out.append('\\');
      at += 2;
      return true;
    }
    if (raw.startsWith("\\S\\", at) && at + 3 < raw.length()) {
      out.append((char) (raw.charAt(at + 3) + 128));
      at += 4;
      return true;
    }
    if (raw.startsWith("\\P", at) && at + 3 < raw.length() && raw.charAt(at + 3) == '\\') {
      at += 4;
      return true;
    }
    if (raw.startsWith("\\X\\", at)) {
      return codes(at + 3, at + 5, 2, at + 5);
    }
    return wide("\\X2\\", 4) || wide("\\X4\\", 8);
  }

  private boolean wide(String begin, int digits) {
    if (!raw.startsWith(begin, at)) {
      return false;
    }
    int end = raw.indexOf("\\X0\\", at + 4);
    return end >= 0 && codes(at + 4, end, digits, end + 4);
  }

  private boolean codes(int from, int to, int digits, int next) {
    if (to > raw.length()
        || (to - from) % digits != 0
        || !raw.substring(from, to).matches("[0-9A-Fa-f]*")) {
      return false;
    }
    StringBuilder found = new StringBuilder();
    for (int i = from; i < to; i += digits) {
      long code = Long.parseLong(raw.substring(i, i + digits), 16);
      if (code > Character.MAX_CODE_POINT) {
        return false;
      }
      if (digits == 4) {
        found.append((char) code);
      } else {
        found.appendCodePoint((int) code);
      }
    }
    out.append(found);
    at = next;
    return true;
  }
}
