package holloway.step;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Locale;
import java.util.regex.Pattern;

/** Cuts the bytes of a STEP file into tokens; blanks and comments are passed over. */
final class StepLexer {
  /** A word or number longer than this is no word; a string longer than this is no text. */
  private static final int LONGEST_WORD = 1000;

  private static final int LONGEST_STRING = 1 << 20;
  private static final Pattern REFERENCE = Pattern.compile("\\d{1,18}");
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d*)?([Ee][+-]?\\d+)?");
  private static final Pattern BINARY = Pattern.compile("[0-3][0-9A-Fa-f]*");

  private final StepBytes bytes;
  private int line;
  private int column;

  StepLexer(StepBytes bytes) {
    this.bytes = bytes;
  }

  /**
   * @throws StepFault when no token begins here
   */
  Token next() throws IOException {
    skipBlanks();
    line = bytes.line();
    column = bytes.column();
    int c = bytes.peek();
    if (c == -1) {
      return token(Token.Kind.END, "");
    }
    if (isLetter(c) || c == '!') {
      return token(Token.Kind.KEYWORD, word(true).toUpperCase(Locale.ROOT));
    }
    if (isDigit(c) || c == '+' || c == '-') {
      return number();
    }
    bytes.take();
    return switch (c) {
      case '#' -> reference();
      case '\'' -> string();
      case '.' -> enumeration();
      case '"' -> binary();
      case '(' -> token(Token.Kind.OPEN, "");
      case ')' -> token(Token.Kind.CLOSE, "");
      case ',' -> token(Token.Kind.COMMA, "");
      case '=' -> token(Token.Kind.EQUALS, "");
      case ';' -> token(Token.Kind.SEMICOLON, "");
      case '$' -> token(Token.Kind.UNSET, "");
      case '*' -> token(Token.Kind.DERIVED, "");
      default -> throw fault("nothing of a STEP file begins with " + shown(c));
    };
  }

  private Token token(Token.Kind kind, String text) {
    return new Token(kind, text, line, column);
  }

  private StepFault fault(String message) {
    return new StepFault(line, column, message);
  }

  private static String shown(int c) {
    return c > ' ' && c < 127 ? "'" + (char) c + "'" : "the byte %d".formatted(c);
  }

  private void skipBlanks() throws IOException {
    while (true) {
      int c = bytes.peek();
      if (c >= 0 && c <= ' ') {
        bytes.take();
      } else if (c == '/') {
        comment();
      } else {
        return;
      }
    }
  }

  private void comment() throws IOException {
    line = bytes.line();
    column = bytes.column();
    bytes.take();
    if (bytes.take() != '*') {
      throw fault("a '/' begins a comment only as '/*'");
    }
    int before = 0;
    while (true) {
      int c = bytes.take();
      if (c == -1) {
        throw fault("this comment is never closed");
      }
      if (before == '*' && c == '/') {
        return;
      }
      before = c;
    }
  }

  private String word(boolean dashes) throws IOException {
    StringBuilder s = new StringBuilder();
    while (true) {
      int c = bytes.peek();
      boolean first = s.length() == 0 && c == '!';
      if (!first && !isLetter(c) && !isDigit(c) && c != '_' && !(dashes && c == '-')) {
        return s.toString();
      }
      s.append((char) bytes.take());
      if (s.length() > LONGEST_WORD) {
        throw fault("this word has no end");
      }
    }
  }

  private Token reference() throws IOException {
    String digits = word(false);
    if (!REFERENCE.matcher(digits).matches()) {
      throw fault("after '#' comes a number");
    }
    return token(Token.Kind.REF, digits);
  }

  private Token number() throws IOException {
    StringBuilder s = new StringBuilder();
    while (true) {
      int c = bytes.peek();
      boolean sign = c == '+' || c == '-';
      if (!isDigit(c) && c != '.' && c != 'E' && c != 'e' && !sign) {
        break;
      }
      s.append((char) bytes.take());
      if (s.length() > LONGEST_WORD) {
        throw fault("this number has no end");
      }
    }
    if (!NUMBER.matcher(s).matches()) {
      throw fault("'" + s + "' is not a number");
    }
    return token(Token.Kind.NUMBER, s.toString());
  }

  private Token string() throws IOException {
    ByteArrayOutputStream s = new ByteArrayOutputStream();
    while (true) {
      int c = bytes.take();
      if (c == '\'') {
        if (bytes.peek() != '\'') {
          return token(Token.Kind.STRING, StepStrings.decode(s.toByteArray()));
        }
        bytes.take();
      }
      if (c == -1 || s.size() > LONGEST_STRING) {
        throw fault("this string is never closed");
      }
      // A line break within a string only folds the line.
      if (c != '\n' && c != '\r') {
        s.write(c);
      }
    }
  }

  private Token enumeration() throws IOException {
    String name = word(false);
    if (name.isEmpty() || bytes.take() != '.') {
      throw fault("a word between dots was begun and not ended");
    }
    return token(Token.Kind.ENUMERATION, name.toUpperCase(Locale.ROOT));
  }

  private Token binary() throws IOException {
    String digits = word(false);
    if (!BINARY.matcher(digits).matches() || bytes.take() != '"') {
      throw fault("a binary is a digit from 0 to 3 and hexadecimal digits between quotes");
    }
    return token(Token.Kind.BINARY, digits);
  }

  private static boolean isLetter(int c) {
    return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c == '_';
  }

  private static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }
}
