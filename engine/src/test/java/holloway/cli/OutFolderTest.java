package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutFolderTest {
  @TempDir Path folder;

  private static SortedMap<String, byte[]> files(String... namesAndTexts) {
    SortedMap<String, byte[]> out = new TreeMap<>();
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      out.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return out;
  }

  private static List<String> names(Path in) throws Exception {
    try (Stream<Path> list = Files.list(in)) {
      return list.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aNewFolderIsMadeWhole() throws Exception {
    Path out = folder.resolve("a/b");
    new OutFolder(out).write(files("x.txt", "1", "y.txt", "2"));
    assertEquals(List.of(OutFolder.LIST, "x.txt", "y.txt"), names(out));
    assertEquals(List.of("b"), names(folder.resolve("a")), "nothing temporary stays");
  }

  @Test
  void ownFilesAreReplacedAndOthersLeftAlone() throws Exception {
    Path out = folder.resolve("out");
    new OutFolder(out).write(files("x.txt", "1", "z.txt", "z"));
    Files.writeString(out.resolve("notes.txt"), "mine");
    new OutFolder(out).write(files("x.txt", "2", "y.txt", "3"));
    assertEquals("2", Files.readString(out.resolve("x.txt")));
    assertEquals("3", Files.readString(out.resolve("y.txt")));
    assertEquals("mine", Files.readString(out.resolve("notes.txt")));
    new OutFolder(out).write(files("z.txt", "still ours"));
    assertEquals(List.of("out"), names(folder));
  }

  @Test
  void whatIsNotDrawnAgainGoesIfItIsOursAndUnchanged() throws Exception {
    Path out = folder.resolve("out");
    new OutFolder(out)
        .write(files("hole-H1.svg", "1", "hole-H2.svg", "2", "hole-H3.svg", "3", "p.txt", "p"));
    Files.writeString(out.resolve("hole-H2.svg"), "2, and my notes");
    Files.writeString(out.resolve("hole-mine.svg"), "mine");
    new OutFolder(out).write(files("hole-H1.svg", "new"), n -> n.startsWith("hole-"));
    assertEquals(
        List.of("hole-H1.svg", "hole-H2.svg", "hole-mine.svg", OutFolder.LIST, "p.txt"),
        names(out));
    assertEquals("2, and my notes", Files.readString(out.resolve("hole-H2.svg")));
    new OutFolder(out).write(files("hole-H3.svg", "again"), n -> n.startsWith("hole-"));
    assertEquals(
        List.of("hole-H2.svg", "hole-H3.svg", "hole-mine.svg", OutFolder.LIST, "p.txt"),
        names(out));
  }

  @Test
  void whatGoesComesBackWhenTheRestFails() throws Exception {
    for (int good = 0; good < 5; good++) {
      Path out = folder.resolve("out" + good);
      new OutFolder(out).write(files("a.svg", "a", "b.svg", "b"));
      String list = Files.readString(out.resolve(OutFolder.LIST));
      AtomicInteger left = new AtomicInteger(good);
      OutFolder.Mover tired =
          (from, to) -> {
            if (left.getAndDecrement() == 0) {
              throw new FileSystemException("the disk is full");
            }
            Files.move(from, to);
          };
      OutFolder failing = new OutFolder(out, tired);
      assertThrows(
          CommandTrouble.class, () -> failing.write(files("b.svg", "new"), n -> n.endsWith("svg")));
      assertEquals("a", Files.readString(out.resolve("a.svg")));
      assertEquals("b", Files.readString(out.resolve("b.svg")));
      assertEquals(list, Files.readString(out.resolve(OutFolder.LIST)));
    }
  }

  @Test
  void aForeignFileStopsEverything() throws Exception {
    Path out = Files.createDirectory(folder.resolve("out"));
    Files.writeString(out.resolve("y.txt"), "mine");
    CommandTrouble e =
        assertThrows(
            CommandTrouble.class,
            () -> new OutFolder(out).write(files("x.txt", "1", "y.txt", "2")));
    assertTrue(e.getMessage().contains("y.txt is there and was not written by Holloway"));
    assertEquals(List.of("y.txt"), names(out));
    assertEquals("mine", Files.readString(out.resolve("y.txt")));
  }

  @Test
  void anEditedFileOfOursIsForeignToo() throws Exception {
    Path out = folder.resolve("out");
    new OutFolder(out).write(files("x.txt", "1"));
    Files.writeString(out.resolve("x.txt"), "1, and my notes");
    assertThrows(CommandTrouble.class, () -> new OutFolder(out).write(files("x.txt", "2")));
    assertEquals("1, and my notes", Files.readString(out.resolve("x.txt")));
  }

  @Test
  void aFileInThePlaceOfTheFolderIsRefused() throws Exception {
    Path out = Files.writeString(folder.resolve("out"), "a file");
    assertThrows(CommandTrouble.class, () -> new OutFolder(out).write(files("x.txt", "1")));
    assertThrows(
        CommandTrouble.class, () -> new OutFolder(out.resolve("in")).write(files("x.txt", "1")));
    assertEquals("a file", Files.readString(out));
    assertEquals(List.of("out"), names(folder));
  }

  @Test
  void whatFailsHalfWayIsPutBack() throws Exception {
    Path out = folder.resolve("out");
    new OutFolder(out).write(files("a.txt", "old a", "b.txt", "old b"));
    String list = Files.readString(out.resolve(OutFolder.LIST));
    for (int good = 0; good < 6; good++) {
      AtomicInteger left = new AtomicInteger(good);
      OutFolder.Mover tired =
          (from, to) -> {
            if (left.getAndDecrement() == 0) {
              throw new FileSystemException("the disk is full");
            }
            Files.move(from, to);
          };
      OutFolder failing = new OutFolder(out, tired);
      assertThrows(
          CommandTrouble.class, () -> failing.write(files("a.txt", "new a", "b.txt", "new b")));
      assertEquals("old a", Files.readString(out.resolve("a.txt")));
      assertEquals("old b", Files.readString(out.resolve("b.txt")));
      assertEquals(list, Files.readString(out.resolve(OutFolder.LIST)));
      assertEquals(List.of("a.txt", "b.txt", OutFolder.LIST), names(out));
      assertEquals(List.of("out"), names(folder));
    }
  }

  @Test
  void aStrangeListIsForeign() throws Exception {
    Path out = Files.createDirectory(folder.resolve("out"));
    Files.writeString(out.resolve(OutFolder.LIST), "my list of films");
    assertThrows(CommandTrouble.class, () -> new OutFolder(out).write(files("x.txt", "1")));
    assertEquals(List.of(OutFolder.LIST), names(out));
  }

  @Test
  void thePlanIsWrittenAsShown() throws Exception {
    Path house = Files.writeString(folder.resolve("toy.yaml"), "house: Toy\n");
    Path out = folder.resolve("out");
    Said text = Said.of("plan", house.toString(), "--out", out.toString());
    assertEquals(0, text.code());
    assertEquals(text.out(), Files.readString(out.resolve("plan.txt")));
    Said json = Said.of("plan", house.toString(), "--json", "--out", out.toString());
    assertEquals(0, json.code());
    assertEquals(json.out(), Files.readString(out.resolve("plan.json")));
    Said check = Said.of("check", house.toString(), out.resolve("plan.json").toString());
    assertEquals(0, check.code(), check.err());
  }
}
