package holloway.step;

import holloway.step.Token.Kind;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Reads a STEP file in one pass; what is not wanted is read over and not kept. */
public final class StepReader {
  /** A longer file is refused. */
  public static final long MOST_BYTES = 200L << 20;

  /** More entities of use than this are no house. */
  static final int MOST_ENTITIES = 4_000_000;

  /** Brackets in brackets. */
  static final int DEEPEST = 60;

  private final StepLexer lexer;
  private final Predicate<String> wanted;
  private Token token;
  private Token lastString;

  private StepReader(InputStream in, Predicate<String> wanted, long mostBytes) {
    this.lexer = new StepLexer(new StepBytes(in, mostBytes));
    this.wanted = wanted;
  }

  /**
   * @param wanted asked with each type in capitals; what is not wanted is only checked to be well
   *     formed
   * @throws StepFault with line and column when this is not a whole STEP file
   */
  public static StepFile read(InputStream in, Predicate<String> wanted) throws IOException {
    return read(in, wanted, MOST_BYTES);
  }

  static StepFile read(InputStream in, Predicate<String> wanted, long mostBytes)
      throws IOException {
    return new StepReader(in, wanted, mostBytes).file();
  }

  private StepFile file() throws IOException {
    token = lexer.next();
    if (token.kind() != Kind.KEYWORD || !token.text().equals("ISO-10303-21")) {
      throw fault("this is no STEP file: it does not begin with ISO-10303-21;");
    }
    keyword("ISO-10303-21");
    take(Kind.SEMICOLON);
    keyword("HEADER");
    take(Kind.SEMICOLON);
    StepFile file = new StepFile(header());
    while (token.kind() == Kind.KEYWORD && token.text().equals("DATA")) {
      data(file);
    }
    keyword("END-ISO-10303-21");
    if (token.kind() != Kind.SEMICOLON) {
      throw unexpected(Kind.SEMICOLON.words());
    }
    // What follows the very last mark is none of ours.
    return file;
  }

  private List<StepEntity> header() throws IOException {
    List<StepEntity> header = new ArrayList<>();
    while (!isEndOfSection()) {
      int line = token.line();
      header.add(new StepEntity(0, List.of(part()), line));
      take(Kind.SEMICOLON);
    }
    endOfSection();
    return header;
  }

  private void data(StepFile file) throws IOException {
    keyword("DATA");
    if (token.kind() == Kind.OPEN) {
      many(0);
    }
    take(Kind.SEMICOLON);
    while (!isEndOfSection()) {
      instance(file);
    }
    endOfSection();
  }

  private void instance(StepFile file) throws IOException {
    lastString = null;
    Token id = take(Kind.REF);
    take(Kind.EQUALS);
    List<StepEntity.Part> parts = new ArrayList<>();
    if (token.kind() == Kind.OPEN) {
      take(Kind.OPEN);
      do {
        parts.add(part());
      } while (token.kind() != Kind.CLOSE);
      take(Kind.CLOSE);
    } else {
      parts.add(part());
    }
    take(Kind.SEMICOLON);
    if (parts.stream().anyMatch(p -> wanted.test(p.type()))) {
      keep(file, new StepEntity(Long.parseLong(id.text()), parts, id.line()), id);
    }
  }

  private static void keep(StepFile file, StepEntity entity, Token at) {
    Optional<StepEntity> before = file.add(entity);
    if (before.isPresent()) {
      throw new StepFault(
          at.line(),
          at.column(),
          "#%s was given on line %d already".formatted(at.text(), before.get().line()));
    }
    if (file.size() > MOST_ENTITIES) {
      throw new StepFault(
          at.line(), at.column(), "more than %d parts; this is no house".formatted(MOST_ENTITIES));
    }
  }

  private StepEntity.Part part() throws IOException {
    String type = take(Kind.KEYWORD).text();
    return new StepEntity.Part(type, many(0));
  }

  /** Reads on from an opening bracket past its closing one. */
  private List<StepValue> many(int depth) throws IOException {
    if (depth > DEEPEST) {
      throw fault("brackets are nested more than %d deep".formatted(DEEPEST));
    }
    take(Kind.OPEN);
    List<StepValue> values = new ArrayList<>();
    if (token.kind() != Kind.CLOSE) {
      values.add(value(depth));
      while (token.kind() == Kind.COMMA) {
        take(Kind.COMMA);
        values.add(value(depth));
      }
    }
    take(Kind.CLOSE);
    return values;
  }

  private StepValue value(int depth) throws IOException {
    Token t = token;
    switch (t.kind()) {
      case OPEN:
        return new StepValue.Many(many(depth + 1));
      case KEYWORD:
        take(Kind.KEYWORD);
        return new StepValue.Typed(t.text(), many(depth + 1));
      default:
        StepValue value = simple(t);
        token = lexer.next();
        return value;
    }
  }

  private StepValue simple(Token t) {
    return switch (t.kind()) {
      case STRING -> {
        lastString = t;
        yield new StepValue.Text(t.text());
      }
      case NUMBER -> new StepValue.Number(number(t));
      case ENUMERATION -> new StepValue.Word(t.text());
      case BINARY -> new StepValue.Bits(t.text());
      case REF -> new StepValue.Ref(Long.parseLong(t.text()));
      case UNSET -> StepValue.Absent.UNSET;
      case DERIVED -> StepValue.Absent.DERIVED;
      default -> throw unexpected("a value");
    };
  }

  private double number(Token t) {
    double value = Double.parseDouble(t.text());
    if (Double.isInfinite(value)) {
      throw fault("the number " + t.shown() + " is too large");
    }
    return value;
  }

  private boolean isEndOfSection() {
    return token.kind() == Kind.KEYWORD && token.text().equals("ENDSEC");
  }

  private void endOfSection() throws IOException {
    keyword("ENDSEC");
    take(Kind.SEMICOLON);
  }

  private void keyword(String word) throws IOException {
    if (token.kind() != Kind.KEYWORD || !token.text().equals(word)) {
      throw unexpected("'" + word + "'");
    }
    token = lexer.next();
  }

  private Token take(Kind kind) throws IOException {
    if (token.kind() != kind) {
      throw unexpected(kind.words());
    }
    Token taken = token;
    token = lexer.next();
    return taken;
  }

  private StepFault unexpected(String expected) {
    if (token.kind() == Kind.END) {
      return fault("the file ends where " + expected + " should stand; is it whole?");
    }
    String maybe = "";
    if (lastString != null && lastString.line() < token.line()) {
      maybe = "; maybe the string begun on line %d is not closed".formatted(lastString.line());
    }
    return fault(
        "here stands %s, where %s should stand%s".formatted(token.shown(), expected, maybe));
  }

  private StepFault fault(String message) {
    return new StepFault(token.line(), token.column(), message);
  }
}
