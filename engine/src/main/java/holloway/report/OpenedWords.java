package holloway.report;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is dug, strung, cut or taken off before cable can go there, by the id of the work. */
final class OpenedWords {
  private static final Pattern DUG = Pattern.compile("conduit/(.+)/dug");
  private static final Pattern STRUNG = Pattern.compile("conduit/(.+)/strung");
  private static final Pattern EDGE = Pattern.compile("skirting/(.+)/set-up");
  private static final Pattern SKIRTING = Pattern.compile("([^/]+)/skirting.*/off");
  private static final Pattern TILES = Pattern.compile("soffit/(.+)/opened");
  private static final Pattern CHANNEL = Pattern.compile(".+/channel-\\d+/.+/from/(.+)");

  private OpenedWords() {}

  /** Empty for any other work. */
  static Optional<String> of(String id) {
    return said(DUG, id, "the trench for ")
        .or(() -> said(STRUNG, id, "the wire to be strung for "))
        .or(() -> said(EDGE, id, "the floor along the skirting in the "))
        .or(() -> said(SKIRTING, id, "the skirting in the "))
        .or(() -> said(TILES, id, "the tiles of the lowered ceiling "))
        .or(() -> said(CHANNEL, id, "the channel for "));
  }

  private static Optional<String> said(Pattern ids, String id, String lead) {
    Matcher m = ids.matcher(id);
    return m.matches() ? Optional.of(lead + m.group(1)) : Optional.empty();
  }
}
