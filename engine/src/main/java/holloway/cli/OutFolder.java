package holloway.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Writes a set of files into a folder: all of them or none. A list of what was written stays in the
 * folder, so that a later run may replace its own files and never another's, nor one that a person
 * has changed since.
 */
final class OutFolder {
  static final String LIST = "holloway-files.txt";

  private static final Pattern LISTED = Pattern.compile("([0-9a-f]{64})  (\\S.*)");

  private final Path folder;
  private final Mover mover;

  /** Moves a file on one disk in one step. */
  interface Mover {
    void move(Path from, Path to) throws IOException;
  }

  OutFolder(Path folder) {
    this(folder, (from, to) -> Files.move(from, to, StandardCopyOption.ATOMIC_MOVE));
  }

  OutFolder(Path folder, Mover mover) {
    this.folder = folder.toAbsolutePath().normalize();
    this.mover = mover;
  }

  /**
   * @throws CommandTrouble when the folder cannot be written or holds files that are not ours
   */
  void write(SortedMap<String, byte[]> files) {
    write(files, name -> false);
  }

  /**
   * As {@link #write(SortedMap)}.
   *
   * @param old which of the files that an earlier run wrote, and that nobody changed, go where this
   *     run does not write them again
   */
  void write(SortedMap<String, byte[]> files, Predicate<String> old) {
    Path temporary = null;
    try {
      refuseForeign(files);
      Path parent = folder.getParent() == null ? folder : folder.getParent();
      Files.createDirectories(parent);
      temporary = Files.createTempDirectory(parent, ".holloway-");
      Path fresh = Files.createDirectory(temporary.resolve("new"));
      List<String> stale = stale(files, old);
      for (Map.Entry<String, byte[]> f : withList(files, stale).entrySet()) {
        Files.write(fresh.resolve(f.getKey()), f.getValue());
      }
      moveIn(fresh, Files.createDirectory(temporary.resolve("old")), stale);
    } catch (IOException e) {
      throw new CommandTrouble(
          "--out " + folder.getFileName() + ": nothing was written (" + reason(e) + ")");
    } finally {
      remove(temporary);
    }
  }

  private static String reason(IOException e) {
    String name = e.getClass().getSimpleName().replace("Exception", "");
    return name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT);
  }

  private void refuseForeign(SortedMap<String, byte[]> files) throws IOException {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new CommandTrouble("--out " + folder.getFileName() + " is a file, not a folder");
    }
    Map<String, String> ours = readList();
    for (String name : files.keySet()) {
      Path there = folder.resolve(name);
      if (Files.exists(there) && !isOurs(there, ours.get(name))) {
        throw new CommandTrouble(
            "--out %s: %s is there and was not written by Holloway, or was changed since; take it"
                    .formatted(folder.getFileName(), name)
                + " away or name another folder");
      }
    }
  }

  /**
   * What an earlier run wrote and this one does not: drawings of holes that are no longer planned.
   * A file that somebody changed since is theirs and stays.
   */
  private List<String> stale(SortedMap<String, byte[]> files, Predicate<String> old)
      throws IOException {
    List<String> out = new ArrayList<>();
    for (Map.Entry<String, String> f : readList().entrySet()) {
      boolean gone = old.test(f.getKey()) && !files.containsKey(f.getKey());
      if (gone && isOurs(folder.resolve(f.getKey()), f.getValue())) {
        out.add(f.getKey());
      }
    }
    return out;
  }

  private static boolean isOurs(Path there, String listed) throws IOException {
    return Files.isRegularFile(there) && sha256(Files.readAllBytes(there)).equals(listed);
  }

  private Map<String, String> readList() throws IOException {
    Map<String, String> out = new TreeMap<>();
    Path list = folder.resolve(LIST);
    if (!Files.exists(list)) {
      return out;
    }
    String text = Files.isRegularFile(list) ? new String(Files.readAllBytes(list), UTF_8) : "?";
    for (String line : text.lines().toList()) {
      Matcher m = LISTED.matcher(line);
      if (!m.matches()) {
        throw new CommandTrouble(
            "--out %s: %s is there and is not a list of ours; name another folder"
                .formatted(folder.getFileName(), LIST));
      }
      out.put(m.group(2), m.group(1));
    }
    return out;
  }

  private SortedMap<String, byte[]> withList(SortedMap<String, byte[]> files, List<String> stale)
      throws IOException {
    Map<String, String> listed = readList();
    stale.forEach(listed::remove);
    files.forEach((name, bytes) -> listed.put(name, sha256(bytes)));
    StringBuilder text = new StringBuilder();
    listed.forEach((name, hash) -> text.append(hash).append("  ").append(name).append('\n'));
    SortedMap<String, byte[]> out = new TreeMap<>(files);
    out.put(LIST, text.toString().getBytes(UTF_8));
    return out;
  }

  /** Moves the new files in; whatever goes wrong, what was there before comes back. */
  private void moveIn(Path fresh, Path old, List<String> stale) throws IOException {
    if (!Files.exists(folder)) {
      Files.move(fresh, folder);
      return;
    }
    Deque<Path> moved = new ArrayDeque<>();
    try (Stream<Path> list = Files.list(fresh)) {
      for (String name : stale) {
        mover.move(folder.resolve(name), old.resolve(name));
        moved.push(folder.resolve(name));
      }
      for (Path file : list.sorted().toList()) {
        Path target = folder.resolve(file.getFileName());
        if (Files.exists(target)) {
          mover.move(target, old.resolve(file.getFileName()));
        }
        moved.push(target);
        mover.move(file, target);
      }
    } catch (IOException e) {
      putBack(moved, old);
      throw e;
    }
  }

  private static void putBack(Deque<Path> moved, Path old) throws IOException {
    for (Path target : moved) {
      Files.deleteIfExists(target);
      Path before = old.resolve(target.getFileName());
      if (Files.exists(before)) {
        Files.move(before, target);
      }
    }
  }

  private static void remove(Path temporary) {
    if (temporary == null) {
      return;
    }
    try (Stream<Path> all = Files.walk(temporary)) {
      for (Path p : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(p);
      }
    } catch (IOException e) {
      // A left-over temporary folder harms nobody; the answer is more important.
      return;
    }
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
