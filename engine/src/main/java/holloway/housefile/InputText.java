package holloway.housefile;

import holloway.house.House.InputFile;
import holloway.house.Where;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/** One file's marked values and its fingerprint. */
record InputText(Marked root, InputFile file) {
  /** A hand-written house is a few kilobytes; nothing larger than 5 MB is read. */
  static final int MOST_BYTES = 5_000_000;

  /** Empty when the file cannot be used; the problem is then recorded. */
  static Optional<InputText> read(Path path, Problems problems) {
    String name = path.getFileName() == null ? path.toString() : path.getFileName().toString();
    Where nowhere = new Where(name, 0, 0);
    try {
      return check(path, name)
          .map(text -> refuse(problems, nowhere, text))
          .orElseGet(() -> parse(path, name, problems));
    } catch (Refused e) {
      return refuse(problems, nowhere, e.getMessage());
    }
  }

  private static Optional<String> check(Path path, String name) {
    if (!Files.exists(path)) {
      return Optional.of(
          "there is no file '" + name + "'; 'holloway start' writes one to begin from");
    }
    if (Files.isDirectory(path)) {
      return Optional.of("'" + name + "' is a folder; name the house file in it");
    }
    if (!Files.isRegularFile(path) || !Files.isReadable(path)) {
      return Optional.of("'" + name + "' cannot be read");
    }
    return Optional.empty();
  }

  private static Optional<InputText> parse(Path path, String name, Problems problems) {
    byte[] bytes = bytes(path, name);
    Where start = new Where(name, 1, 1);
    String text = decode(bytes, name);
    if (text.isBlank()) {
      return refuse(
          problems, start, "the file is empty; 'holloway start' writes one to begin from");
    }
    boolean clean = problems.isEmpty();
    Optional<Marked> root = MarkedTree.of(untabbed(text), name, problems);
    if (root.isEmpty() && clean && problems.isEmpty()) {
      return refuse(problems, start, "the file holds nothing but comments");
    }
    return root.map(r -> new InputText(r, new InputFile(name, sha256(bytes))));
  }

  /** JSON may be indented with tabs, which YAML does not allow; no JSON string holds a raw tab. */
  private static String untabbed(String text) {
    return text.stripLeading().startsWith("{") ? text.replace('\t', ' ') : text;
  }

  private static byte[] bytes(Path path, String name) {
    try (InputStream in = Files.newInputStream(path)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new Refused("'" + name + "' is larger than 5 MB; no house file is", "");
      }
      return bytes;
    } catch (IOException e) {
      throw new Refused("'" + name + "' cannot be read: " + e.getMessage(), "");
    }
  }

  private static String decode(byte[] bytes, String name) {
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      return text.startsWith("\ufeff") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new Refused("'" + name + "' is not text in UTF-8; save it as UTF-8", "");
    }
  }

  private static Optional<InputText> refuse(Problems problems, Where where, String text) {
    problems.add(where, "", "", "", text);
    return Optional.empty();
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
