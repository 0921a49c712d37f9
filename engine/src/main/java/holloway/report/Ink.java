package holloway.report;

/** Whether titles may be set in bold: only on a terminal that wants it. */
public enum Ink {
  PLAIN,
  BOLD_TITLES;

  String title(String text) {
    return this == PLAIN ? text : "\u001b[1m" + text + "\u001b[0m";
  }
}
