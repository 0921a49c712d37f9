package holloway.report;

/** Where a person stands, and which opening they use, in words instead of ids. */
final class StandWords {
  private StandWords() {}

  /** For a hole's stand: a stand's id, an access's id, or the outlet whose cut-out it is. */
  static String of(String stand) {
    String name = plain(stand);
    if (name.equals("outside")) {
      return "outside, from the ground";
    }
    if (name.equals("ladder")) {
      return "outside, on a ladder";
    }
    if (name.startsWith("room/")) {
      return "in the " + name.substring("room/".length());
    }
    if (name.startsWith("attic/")) {
      return "in the attic under the " + name.substring("attic/".length());
    }
    if (name.startsWith("crawlspace/")) {
      return "in the crawlspace";
    }
    if (name.startsWith("under/")) {
      return "in the " + name.substring("under/".length()) + ", under its joists";
    }
    return opening(name);
  }

  /** An access by its id: a patch, lifted boards, or a cut-out. */
  static String opening(String id) {
    String name = plain(id);
    if (name.endsWith("/wall-patch-low")) {
      return "through a patch low in the wall";
    }
    if (name.endsWith("/wall-patch-high")) {
      return "through a patch high in the wall";
    }
    if (name.contains("/wall-patch")) {
      return "through a patch in the wall";
    }
    if (name.contains("/ceiling-patch")) {
      return "through a patch in the ceiling";
    }
    if (name.contains("/lifted-boards")) {
      return "through lifted floorboards";
    }
    if (name.startsWith("conduit/")) {
      return "at the box of the conduit";
    }
    if (name.equals("cabinet/behind")) {
      return "through a cut-out behind the cabinet";
    }
    return "through the cut-out of " + name;
  }

  /** An alternative of a range is the outlet itself, wherever in its range it went. */
  static String plain(String text) {
    return text.replaceAll("@\\d+", "");
  }
}
