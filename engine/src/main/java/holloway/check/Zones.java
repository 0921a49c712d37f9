package holloway.check;

/**
 * What kind of zone an id names: the word before any mark that tells one of a kind from another.
 */
final class Zones {
  private Zones() {}

  static String kind(String zone) {
    return zone.split("[/:]", 2)[0];
  }
}
