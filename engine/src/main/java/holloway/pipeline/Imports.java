package holloway.pipeline;

import holloway.housefile.draft.Draft;
import holloway.housefile.draft.DraftText;
import holloway.importing.IfcImport;
import holloway.importing.ModelFault;
import holloway.step.StepFault;
import holloway.step.StepReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** A first house file out of a building model. */
final class Imports {
  private Imports() {}

  /**
   * @throws InputTrouble when the model is missing or wrong
   */
  static String text(Path model, StartWishes wishes, Optional<String> name) {
    String file = model.getFileName().toString();
    Draft draft = draft(model, file);
    return ReadBack.settled(
        DraftText.of(
            draft, wishes.schema(), name.orElse(draft.title()), wishes.place(), wishes.built()));
  }

  private static Draft draft(Path model, String file) {
    try (InputStream in = Files.newInputStream(model)) {
      if (Files.size(model) > StepReader.MOST_BYTES) {
        throw new InputTrouble(
            "%s: the file is longer than the %d MB we read"
                .formatted(file, StepReader.MOST_BYTES >> 20));
      }
      return IfcImport.read(in, file);
    } catch (StepFault e) {
      throw new InputTrouble("%s:%d:%d: %s".formatted(file, e.line(), e.column(), e.getMessage()));
    } catch (ModelFault e) {
      throw new InputTrouble(file + ": " + e.getMessage());
    } catch (NoSuchFileException e) {
      throw new InputTrouble(file + ": there is no such file");
    } catch (IOException e) {
      throw new InputTrouble(file + ": the file cannot be read");
    }
  }
}
