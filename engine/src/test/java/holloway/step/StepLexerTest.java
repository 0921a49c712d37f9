package holloway.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holloway.step.Token.Kind;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every kind of token of ISO 10303-21, 6.3. */
class StepLexerTest {
  private static StepLexer lexer(byte[] bytes) {
    return new StepLexer(new StepBytes(new ByteArrayInputStream(bytes), 10_000));
  }

  private static List<Token> tokens(String text) throws IOException {
    StepLexer lexer = lexer(text.getBytes(StandardCharsets.UTF_8));
    List<Token> out = new ArrayList<>();
    for (Token t = lexer.next(); t.kind() != Kind.END; t = lexer.next()) {
      out.add(t);
    }
    return out;
  }

  private static Token one(String text) throws IOException {
    List<Token> all = tokens(text);
    assertEquals(1, all.size(), all::toString);
    return all.get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "IfcWall|KEYWORD|IFCWALL",
        "ISO-10303-21|KEYWORD|ISO-10303-21",
        "!USER_MADE|KEYWORD|!USER_MADE",
        "#120|REF|120",
        ".T.|ENUMERATION|T",
        ".notDefined.|ENUMERATION|NOTDEFINED",
        "\"092A\"|BINARY|092A",
        "12|NUMBER|12",
        "-7|NUMBER|-7",
        "+0.|NUMBER|+0.",
        "-1.5E-05|NUMBER|-1.5E-05",
        "3.048e-1|NUMBER|3.048e-1",
        "$|UNSET|``",
        "*|DERIVED|``",
        "(|OPEN|``",
        ")|CLOSE|``",
        ",|COMMA|``",
        "=|EQUALS|``",
        ";|SEMICOLON|``",
        "'plain'|STRING|plain",
        "''|STRING|``",
        "'it''s'|STRING|it's",
        "''''|STRING|'",
        "'caf\\X2\\00E9\\X0\\ \\X2\\00FC00DF\\X0\\'|STRING|café üß",
        "'\\X4\\0001F3E0\\X0\\'|STRING|\uD83C\uDFE0",
        "'\\X\\E9t\\X\\E9'|STRING|été",
        "'\\S\\i'|STRING|é",
        "'\\PA\\x'|STRING|x",
        "'C:\\\\dir'|STRING|C:\\dir",
        "'C:\\dir'|STRING|C:\\dir",
        "'\\X2\\00'|STRING|\\X2\\00",
        "'naïve'|STRING|naïve"
      })
  void aTokenByItself(String text, Kind kind, String says) throws IOException {
    Token t = one(text);
    assertEquals(kind, t.kind());
    assertEquals(says, t.text());
  }

  @Test
  void latinBytesThatAreNoUtf8AreRead() throws IOException {
    Token t = lexer(new byte[] {'\'', (byte) 0xe9, '\''}).next();
    assertEquals("é", t.text());
  }

  @Test
  void aFoldedStringIsOneString() throws IOException {
    assertEquals("onetwo", one("'one\r\ntwo'").text());
  }

  @Test
  void blanksAndCommentsStandBetween() throws IOException {
    List<Token> all = tokens("/* a **/ #1 /* ' \n */\n  =\tA/*x*/(1.E+3)");
    assertEquals(
        List.of(Kind.REF, Kind.EQUALS, Kind.KEYWORD, Kind.OPEN, Kind.NUMBER, Kind.CLOSE),
        all.stream().map(Token::kind).toList());
    assertEquals(3, all.get(1).line());
    assertEquals(3, all.get(1).column());
    assertEquals("1:10", all.get(0).line() + ":" + all.get(0).column());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "'never closed",
        ".T",
        "..",
        ".T(",
        "\"9\"",
        "\"1G\"",
        "\"1",
        "#x",
        "#",
        "#1234567890123456789",
        "1.2.3",
        "-",
        "+E",
        "1E",
        "/x",
        "/* never closed *",
        "@",
        "<a>",
        "{"
      })
  void whatIsNoTokenIsSaidWithItsPlace(String text) {
    StepFault e = assertThrows(StepFault.class, () -> tokens("\n  " + text));
    assertEquals("2:3", e.line() + ":" + e.column(), e.getMessage());
  }

  @Test
  void wordsNumbersAndStringsHaveAnEnd() {
    assertThrows(StepFault.class, () -> tokens("A".repeat(2_000)));
    assertThrows(StepFault.class, () -> tokens("1".repeat(2_000)));
    StepFault e = assertThrows(StepFault.class, () -> tokens("'" + "x".repeat(20_000)));
    assertEquals("the file is longer than the 0 MB we read", e.getMessage());
  }
}
