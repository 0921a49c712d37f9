package holloway.pack;

import holloway.house.House;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.TreeSet;

/**
 * Under what a browser keeps the ticks of one house. Two houses of one name do not share it; what
 * usually changes between two packs of one house (outlets, wishes, what was found, the plan) does
 * not change it.
 */
final class StoreKey {
  private StoreKey() {}

  /** 16 hex digits from the names of the house, its levels and its rooms. */
  static String of(House house) {
    TreeSet<String> names = new TreeSet<>();
    house.levels().forEach(l -> names.add("level " + l.name()));
    house.rooms().forEach(r -> names.add("room " + r.level() + "/" + r.name()));
    String all = house.name() + "\n" + String.join("\n", names);
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(all.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, 16);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
