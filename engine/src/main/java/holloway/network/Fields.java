package holloway.network;

/** One line of a network file, cut at blanks. */
record Fields(int line, String[] words) {
  static Fields of(int line, String text) {
    return new Fields(line, text.strip().split("\\s+"));
  }

  String word() {
    return words[0];
  }

  /** A whole number of at least {@code least}. */
  int whole(int at, int least) {
    long v = cost(at);
    if (v < least || v > Integer.MAX_VALUE) {
      throw wrong("'" + words[at] + "' is not a whole number from " + least);
    }
    return (int) v;
  }

  /** A whole number, never below nothing and never so large that sums of it could overflow. */
  long cost(int at) {
    if (at >= words.length) {
      throw wrong("there are only " + words.length + " words");
    }
    try {
      long v = Long.parseLong(words[at]);
      if (v >= 0 && v <= 1_000_000_000L) {
        return v;
      }
    } catch (NumberFormatException e) {
      throw wrong("'" + words[at] + "' is not a whole number");
    }
    throw wrong(words[at] + " is not between 0 and 1000000000");
  }

  NetworkException wrong(String what) {
    return new NetworkException("line " + line + ": " + what);
  }
}
