package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A small sound house file that a test changes, writes and reads. */
final class Written {
  static final String SOUND =
      """
      house: Toy House
      place: us
      built: 1994
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
        upper: { above: ground, floor: { joists: 2x10, run: east-west } }
      rooms:
        garage: { level: ground, size: 20 ft x 22 ft }
        kitchen: { level: ground, size: 14 ft x 12 ft, east-of: garage, align: south }
        office: { level: upper, size: 14 ft x 12 ft, above: kitchen, align: south-east }
      walls:
        - { between: [garage, kitchen], studs: 2x6, separation: garage }
      openings:
        - { door, between: [garage, kitchen], from: north 2 ft, width: 32 in }
        - { window, side: office east, from: south 3 ft, width: 4 ft }
      roof:
        - { over: upper, shape: gable, ridge: east-west, pitch: 6/12, frame: trusses }
      hollows:
        - { chase: shaft, beside: office west, from: upper, to: attic, size: 10 in x 22 in }
      things:
        - { socket, in: office, wall: south, from: west 1 ft }
      cabinet: { in: garage, wall: east, from: south 4 ft, height: 5 ft }
      outlets:
        - { name: desk, in: office, wall: south, from: west 3 ft, height: 16 in, cables: [cat6] }
      """;

  private final Path dir;
  private String text = SOUND;

  Written(Path dir) {
    this.dir = dir;
  }

  /** The first occurrence of {@code old} replaced; it must be there. */
  Written with(String old, String changed) {
    assertTrue(text.contains(old), () -> "no '" + old + "' in the file");
    int at = text.indexOf(old);
    text = text.substring(0, at) + changed + text.substring(at + old.length());
    return this;
  }

  Written plus(String more) {
    text += more;
    return this;
  }

  Written beside(String name, String content) throws IOException {
    Files.writeString(dir.resolve(name), content);
    return this;
  }

  Reading read() throws IOException {
    Path file = dir.resolve("toy.yaml");
    Files.writeString(file, text);
    return HouseFile.read(file);
  }

  Reading.Sound sound() throws IOException {
    Reading reading = read();
    return assertInstanceOf(Reading.Sound.class, reading, reading::toString);
  }

  List<Problem> problems() throws IOException {
    return assertInstanceOf(Reading.Faulty.class, read(), "no problem was seen").problems();
  }

  /** The only problem. */
  Problem problem() throws IOException {
    List<Problem> all = problems();
    assertEquals(1, all.size(), all::toString);
    return all.get(0);
  }

  /** The line of the first occurrence, from 1. */
  int lineOf(String part) {
    int at = text.indexOf(part);
    assertTrue(at >= 0, () -> "no '" + part + "' in the file");
    return (int) text.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
  }

  /** The column of the first occurrence, from 1. */
  int columnOf(String part) {
    int at = text.indexOf(part);
    return at - text.lastIndexOf('\n', at - 1);
  }

  /** The only problem stands where {@code part} begins and says the given things. */
  Problem assertProblemAt(String part, String... says) throws IOException {
    Problem p = problem();
    assertEquals("toy.yaml", p.where().file());
    assertEquals(lineOf(part), p.where().line(), p::toString);
    assertEquals(columnOf(part), p.where().column(), p::toString);
    for (String s : says) {
      assertTrue(p.toString().contains(s), () -> "'" + s + "' is not in: " + p);
    }
    return p;
  }
}
