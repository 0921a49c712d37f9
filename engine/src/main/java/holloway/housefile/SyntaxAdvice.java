package holloway.housefile;

import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** Says in a person's words what usually causes a syntax error. */
final class SyntaxAdvice {
  private SyntaxAdvice() {}

  static String of(MarkedYamlEngineException e, String line) {
    String problem = e.getProblem() == null ? "" : e.getProblem();
    if (problem.contains("'\\t") || line.contains("\t")) {
      return "this is not YAML: indent with blanks, not with tabs";
    }
    if (problem.contains("mapping values are not allowed")) {
      return "this is not YAML: a second ':' on one line (or a wrong indent); keys of one thing"
          + " stand on their own lines with the same indent, or inside { }";
    }
    if (problem.contains("',' or ']'") || problem.contains("',' or '}'")) {
      return "this is not YAML: a bracket that was opened is not closed, or a comma is missing";
    }
    if (problem.contains("could not find expected ':'")) {
      return "this is not YAML: after a key comes ': ' (a colon and a blank)";
    }
    if (problem.contains("unexpected end of stream") || problem.contains("quoted scalar")) {
      return "this is not YAML: a quote that was opened is not closed";
    }
    if (problem.contains("expected <block end>")) {
      return "this is not YAML: this line is indented differently from those before it";
    }
    return "this is not YAML: " + problem;
  }
}
