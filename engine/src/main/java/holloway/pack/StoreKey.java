package holloway.pack;

import holloway.house.House;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Under what a browser keeps the ticks of one house. Two houses of one name do not share it; what
 * usually changes between two packs of one house (outlets, wishes, what was found, the plan) does
 * not change it. Houses whose names are all the same are told apart by sizes and places of rooms,
 * and twins by the name of the house file, whose ticks the page hands over only when asked.
 */
final class StoreKey {
  private StoreKey() {}

  /**
   * Width and depth of every room in millimetres, by level and name: what tells two houses apart
   * whose names are all the same. The page takes a size that is a little off for the same room,
   * measured again.
   */
  static String sizes(Placed placed) {
    TreeMap<String, String> out = new TreeMap<>();
    for (PlacedRoom r : placed.rooms()) {
      long wide = r.outline().xRange().length() / 1_000_000;
      long deep = r.outline().yRange().length() / 1_000_000;
      out.put(r.room().level() + "/" + r.room().name(), wide + "," + deep);
    }
    return String.join(",", out.values());
  }

  /**
   * Where each room lies, by level and name: millimetres of its middle east and north of the corner
   * of all rooms. A house built as another's mirror image has its rooms elsewhere.
   */
  static String places(Placed placed) {
    long west = placed.rooms().stream().mapToLong(r -> r.outline().xRange().lo()).min().orElse(0);
    long south = placed.rooms().stream().mapToLong(r -> r.outline().yRange().lo()).min().orElse(0);
    TreeMap<String, String> out = new TreeMap<>();
    for (PlacedRoom r : placed.rooms()) {
      long east = (r.outline().xRange().mid() - west) / 1_000_000;
      long north = (r.outline().yRange().mid() - south) / 1_000_000;
      out.put(r.room().level() + "/" + r.room().name(), east + "," + north);
    }
    return String.join(",", out.values());
  }

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
