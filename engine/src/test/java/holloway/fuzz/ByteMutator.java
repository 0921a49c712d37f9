package holloway.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;

/** Spoils single bytes: what a torn download or a wrong editor leaves behind. */
final class ByteMutator {
  /** Broken UTF-8, controls, marks and letters that look like others. */
  private static final byte[][] ODD = {
    {(byte) 0xff},
    {(byte) 0xc0, (byte) 0x80},
    {(byte) 0xe2, (byte) 0x82},
    {0},
    {7},
    {27},
    {'\t'},
    {'\r'},
    {(byte) 0xef, (byte) 0xbb, (byte) 0xbf},
    {(byte) 0xed, (byte) 0xa0, (byte) 0x80},
    odd("\u2028"),
    odd("\u00a0"),
    odd("\u0301"),
    odd("\u202e"),
    odd("\ud83d\ude00"),
    odd("\u00d7"),
    odd("&a "),
    odd("*a "),
    odd("!x "),
    odd("<<: "),
    odd("---\n"),
    odd("...\n"),
    odd("? "),
    odd("{"),
    odd("["),
    odd("\""),
    odd("'"),
    odd("|\n"),
    odd("#"),
    odd("%"),
    odd("@"),
    odd("`")
  };

  private ByteMutator() {}

  private static byte[] odd(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  static byte[] mutate(byte[] from, Random r) {
    byte[] bytes = from;
    for (int times = 1 + r.nextInt(3); times > 0 && bytes.length > 1; times--) {
      bytes = once(bytes, r);
    }
    return bytes;
  }

  private static byte[] once(byte[] from, Random r) {
    int at = r.nextInt(from.length);
    int far = Math.min(from.length, at + 1 + r.nextInt(60));
    switch (r.nextInt(6)) {
      case 0 -> {
        byte[] flipped = from.clone();
        flipped[at] ^= (byte) (1 << r.nextInt(8));
        return flipped;
      }
      case 1 -> {
        return Arrays.copyOf(from, at);
      }
      case 2 -> {
        return splice(from, at, far, new byte[0]);
      }
      case 3 -> {
        byte[] noise = new byte[1 + r.nextInt(8)];
        r.nextBytes(noise);
        return splice(from, at, at, noise);
      }
      case 4 -> {
        return splice(from, at, at, Arrays.copyOfRange(from, at, far));
      }
      default -> {
        return splice(from, at, at, ODD[r.nextInt(ODD.length)]);
      }
    }
  }

  /** The bytes with those from {@code at} to {@code to} replaced. */
  private static byte[] splice(byte[] from, int at, int to, byte[] by) {
    byte[] out = new byte[from.length - (to - at) + by.length];
    System.arraycopy(from, 0, out, 0, at);
    System.arraycopy(by, 0, out, at, by.length);
    System.arraycopy(from, to, out, at + by.length, from.length - to);
    return out;
  }
}
