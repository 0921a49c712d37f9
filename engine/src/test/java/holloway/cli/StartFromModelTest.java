package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.importing.Models;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code start --from} through all real stages. */
class StartFromModelTest {
  @TempDir Path folder;
  private Path out;

  @BeforeEach
  void name() {
    out = folder.resolve("house.yaml");
  }

  private String model(String text) throws Exception {
    return Files.writeString(folder.resolve("toy.ifc"), text).toString();
  }

  @ParameterizedTest
  @ValueSource(strings = {"bungalow", "two-storeys", "turned"})
  void aModelBecomesAHouseFileThatIsUnderstood(String name) throws Exception {
    Said said = Said.whole("start", "--from", model(Models.text(name)), "--out", out.toString());
    assertEquals(0, said.code(), said.err());
    String text = Files.readString(out);
    long left = text.lines().filter(l -> l.strip().startsWith("# to finish: ")).count();
    assertTrue(left >= 6, text);
    assertTrue(said.out().startsWith("Look at the " + left + " places marked '# to finish:'"));
    Said check = Said.whole("check", out.toString());
    assertEquals(0, check.code(), check.err());
    assertTrue(check.out().contains("DOES NOT CLOSE\n  Nothing."), check.out());
  }

  @Test
  void theModelNamesTheHouseUnlessThePersonDoes() throws Exception {
    String model = model(Models.text("bungalow"));
    assertTrue(Said.whole("start", "--from", model).out().contains("\nhouse: Heron Cottage\n"));
    Said own = Said.whole("start", "--from", model, "--name", "Fern Cottage", "--place", "uk");
    assertTrue(own.out().contains("\nhouse: Fern Cottage\nplace: uk\n"), own.out());
  }

  @Test
  void aWrongModelWritesNothing() throws Exception {
    String cut = Models.text("bungalow").substring(0, 4_000);
    Said said = Said.whole("start", "--from", model(cut), "--out", out.toString());
    assertEquals(3, said.code());
    assertTrue(said.err().matches("toy\\.ifc:\\d+:\\d+: .*\\n"), said.err());
    assertEquals("", said.out());
    assertFalse(Files.exists(out));
    Said none = Said.whole("start", "--from", folder.resolve("none.ifc").toString());
    assertEquals(new Said(3, "", "none.ifc: there is no such file\n"), none);
    assertEquals(3, Said.whole("start", "--from", folder.toString()).code());
  }

  @Test
  void aFileThatIsThereIsLeftAloneAndOptionsOfAnEmptyHouseAreRefused() throws Exception {
    String model = model(Models.text("turned"));
    Files.writeString(out, "mine");
    assertEquals(2, Said.whole("start", "--from", model, "--out", out.toString()).code());
    assertEquals("mine", Files.readString(out));
    assertEquals(2, Said.whole("start", "--from", model, "--levels", "2").code());
    assertEquals(2, Said.whole("start", "--from", model, "--metric").code());
    assertEquals(2, Said.whole("start", "--from", model, "--name", "a/b").code());
  }
}
