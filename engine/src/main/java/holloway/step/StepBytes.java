package holloway.step;

import java.io.IOException;
import java.io.InputStream;

/** The bytes of a file one by one, with line and column, and no more of them than a limit. */
final class StepBytes {
  private static final int END = -1;
  private final InputStream in;
  private final long most;
  private final byte[] buffer = new byte[1 << 16];
  private int at;
  private int filled;
  private long read;
  private int line = 1;
  private int column = 1;

  /**
   * @param most bytes that the file may have
   */
  StepBytes(InputStream in, long most) {
    this.in = in;
    this.most = most;
  }

  int line() {
    return line;
  }

  int column() {
    return column;
  }

  /** The next byte, left where it is; -1 at the end. */
  int peek() throws IOException {
    if (at == filled) {
      at = 0;
      filled = Math.max(0, in.read(buffer));
      read += filled;
      if (read > most) {
        throw new StepFault(
            line, column, "the file is longer than the %d MB we read".formatted(most >> 20));
      }
    }
    return filled == 0 ? END : buffer[at] & 0xff;
  }

  /** The next byte, taken; -1 at the end. */
  int take() throws IOException {
    int c = peek();
    if (c == END) {
      return END;
    }
    at++;
    if (c == '\n') {
      line++;
      column = 1;
    } else {
      column++;
    }
    return c;
  }
}
