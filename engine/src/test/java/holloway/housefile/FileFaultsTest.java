package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with the file as a file. */
class FileFaultsTest {
  @TempDir Path dir;

  private String only(Path file) {
    List<Problem> all = assertInstanceOf(Reading.Faulty.class, HouseFile.read(file)).problems();
    assertEquals(1, all.size(), all::toString);
    return all.get(0).toString();
  }

  private String only(String content) throws IOException {
    Path file = dir.resolve("house.yaml");
    Files.writeString(file, content);
    return only(file);
  }

  @Test
  void aMissingFile() {
    String says = only(dir.resolve("gone.yaml"));
    assertTrue(says.contains("there is no file 'gone.yaml'"), says);
    assertTrue(says.contains("holloway start"), says);
  }

  @Test
  void aFolder() {
    assertTrue(only(dir).contains("is a folder"));
    assertTrue(only(Path.of("/")).contains("is a folder"));
  }

  @Test
  void anEmptyFile() throws IOException {
    assertTrue(only("").contains("the file is empty"));
    assertTrue(only(" \n\n").contains("the file is empty"));
    assertTrue(only("# a comment\n").contains("nothing but comments"));
  }

  /** No array would hold it, so an answer means that it was not read. */
  @Test
  void fourGigabytesAreNotRead() throws IOException {
    Path file = dir.resolve("huge.yaml");
    try (RandomAccessFile f = new RandomAccessFile(file.toFile(), "rw")) {
      f.setLength(4_000_000_000L);
    }
    String says = only(file);
    assertTrue(says.contains("larger than 5 MB"), says);
  }

  @Test
  void bytesThatAreNotUtf8() throws IOException {
    Path file = dir.resolve("latin.yaml");
    Files.write(file, "house: Caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
    assertTrue(only(file).contains("not text in UTF-8"));
  }

  @Test
  void aByteOrderMarkAndWindowsLineEndsAreNoFault() throws IOException {
    Path file = dir.resolve("marked.yaml");
    Files.writeString(file, "\ufeff" + Written.SOUND.replace("\n", "\r\n"));
    assertInstanceOf(Reading.Sound.class, HouseFile.read(file));
  }

  @Test
  void plainProse() throws IOException {
    String says = only("My house has three rooms.\n");
    assertTrue(says.startsWith("house.yaml:1:1:"), says);
    assertTrue(says.contains("levels"), says);
  }

  @Test
  void aList() throws IOException {
    assertTrue(only("- house\n- place\n").contains("a list of 2"));
  }

  @Test
  void tabs() throws IOException {
    String says = only("house: Toy\nlevels:\n\tground: 1\n");
    assertTrue(says.startsWith("house.yaml:3:"), says);
    assertTrue(says.contains("not with tabs"), says);
  }

  @Test
  void anOpenBracketAndAnOpenQuote() throws IOException {
    String bracket = only("house: Toy\nrooms: { hall: { level: ground\n");
    assertTrue(bracket.contains("not closed"), bracket);
    assertTrue(bracket.startsWith("house.yaml:"), bracket);
    String quote = only("house: \"Toy\nplace: us\n");
    assertTrue(quote.contains("quote"), quote);
  }

  @Test
  void twoColonsOnALine() throws IOException {
    String says = only("house: Toy place: us\n");
    assertTrue(says.startsWith("house.yaml:1:"), says);
    assertTrue(says.contains("a second ':'"), says);
  }

  @Test
  void controlCharacters() throws IOException {
    assertTrue(only("house: a\u0000b\n").contains("not YAML"));
  }

  @Test
  void tooDeep() throws IOException {
    String says = only("house: " + "[".repeat(2_000_000));
    assertTrue(says.contains("nested too deeply"), says);
    assertTrue(only("a: ".repeat(1) + "{a: ".repeat(500_000)).contains("nested too deeply"));
  }

  @Test
  void aSecondDocument() throws IOException {
    String says = only(Written.SOUND + "---\nhouse: Other\n");
    assertTrue(says.contains("a second document"), says);
    assertTrue(says.startsWith("house.yaml:25:"), says);
  }

  @Test
  void aFileOfNonsenseGivesAShortList() throws IOException {
    List<Problem> all = assertInstanceOf(Reading.Faulty.class, nonsense(100_000)).problems();
    assertEquals(Problems.MOST + 1, all.size());
    assertTrue(all.stream().anyMatch(p -> p.text().contains("more were left out")));
  }

  /** Each mistake looked up among all the others would take sixteen times as long. */
  @Test
  void fourTimesTheNonsenseTakesNoTenTimesAsLong() throws IOException {
    nonsense(2_000);
    double few = Math.min(took(5_000), took(5_000));
    double many = Math.min(took(20_000), took(20_000));
    assertTrue(many < 10 * few, "%.1f times".formatted(many / few));
  }

  /** Processor time of this thread, for others may be at work beside it. */
  private double took(int lines) throws IOException {
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    long before = clock.getCurrentThreadCpuTime();
    nonsense(lines);
    return clock.getCurrentThreadCpuTime() - before;
  }

  private Reading nonsense(int lines) throws IOException {
    StringBuilder s = new StringBuilder("house: Toy\n");
    for (int i = 0; i < lines; i++) {
      s.append("k").append(i).append(": 1\n");
    }
    return HouseFile.read(Files.writeString(dir.resolve("house.yaml"), s.toString()));
  }

  @Test
  void anEndlessText() throws IOException {
    Path file = dir.resolve("house.yaml");
    Files.writeString(file, Written.SOUND.replace("Toy House", "x".repeat(100_000)));
    assertTrue(only(file).contains("too long"));
  }
}
