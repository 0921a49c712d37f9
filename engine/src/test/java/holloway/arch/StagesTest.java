package holloway.arch;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The stage table of DEVELOPERS.md as a test over compiled classes. */
class StagesTest {
  private static final String GROUND = "units geometry finding limits catalog ";
  private static final String INPUT = GROUND + "house request ";
  private static final String DERIVED = INPUT + "survey framing hollow ";
  private static final String JUDGED = DERIVED + "plan ";

  /**
   * A stage and what it may import besides itself. The reader of the house file is seen only by the
   * wiring, so nothing behind it can depend on syntax; the judges are blind to the graph, to the
   * solver and to one another.
   */
  enum Stage {
    UNITS(""),
    GEOMETRY("units"),
    FINDING("units geometry"),
    LIMITS("units geometry finding"),
    CATALOG("units geometry finding limits"),
    STEP(""),
    HOUSE(GROUND),
    REQUEST(GROUND + "house"),
    HOUSEFILE(INPUT),
    IMPORTING(INPUT + "step housefile"),
    SURVEY(INPUT),
    FRAMING(INPUT + "survey"),
    HOLLOW(INPUT + "survey framing"),
    ROUTING(DERIVED),
    PLAN(DERIVED),
    SOLVE(DERIVED + "routing plan"),
    CHECK(JUDGED),
    TAKEOFF(JUDGED),
    SCHEDULE(JUDGED),
    DRAWING(INPUT + "survey framing plan schedule"),
    SCENE(JUDGED),
    REPORT(JUDGED + "drawing check takeoff schedule scene"),
    PACK(JUDGED + "drawing takeoff schedule scene report"),
    CERTIFY(GROUND + "hollow routing plan"),
    NETWORK(INPUT + "hollow routing solve"),
    PIPELINE(
        JUDGED
            + "drawing step housefile importing routing solve check takeoff schedule scene report"
            + " pack certify network"),
    CLI(
        JUDGED
            + "drawing housefile importing routing solve check takeoff schedule scene report pack"
            + " certify network pipeline");

    private final Set<String> mayUse;

    Stage(String mayUse) {
      this.mayUse =
          Arrays.stream(mayUse.split(" "))
              .filter(s -> !s.isEmpty())
              .collect(Collectors.toCollection(TreeSet::new));
    }

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    ArchRule rule() {
      String[] barred =
          Arrays.stream(values())
              .filter(s -> s != this && !mayUse.contains(s.word()))
              .map(s -> "holloway." + s.word() + "..")
              .toArray(String[]::new);
      return noClasses()
          .that()
          .resideInAPackage("holloway." + word() + "..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(barred)
          .allowEmptyShould(true)
          .because(word() + " may use only " + mayUse);
    }
  }

  private static JavaClasses classes;

  @BeforeAll
  static void read() {
    classes =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("holloway");
  }

  @ParameterizedTest
  @EnumSource(Stage.class)
  void aStageSeesOnlyWhatStandsBeforeIt(Stage stage) {
    stage.rule().check(classes);
  }

  @Test
  void everyPackageIsInTheTable() {
    Set<String> known = Arrays.stream(Stage.values()).map(Stage::word).collect(Collectors.toSet());
    Set<String> strangers = new TreeSet<>();
    for (JavaClass c : classes) {
      String stage = c.getPackageName().split("\\.", 3)[1];
      if (!known.contains(stage)) {
        strangers.add(c.getPackageName());
      }
    }
    assertEquals(Set.of(), strangers);
    assertTrue(classes.size() > 50, "too few classes were read: " + classes.size());
  }

  /**
   * The table itself is in order: what a stage may use stands above it, so there is no way round.
   */
  @Test
  void theTableHasNoLoop() {
    for (Stage a : Stage.values()) {
      for (String b : a.mayUse) {
        Stage used = Stage.valueOf(b.toUpperCase(Locale.ROOT));
        assertTrue(used.ordinal() < a.ordinal(), a + " uses " + used);
      }
    }
  }

  @Test
  void packagesHaveNoCycles() {
    slices().matching("holloway.(*)..").should().beFreeOfCycles().check(classes);
  }

  /** Shows that a broken table is seen: house does use units. */
  @Test
  void aBreachIsSeen() {
    ArchRule wrong =
        noClasses()
            .that()
            .resideInAPackage("holloway.house..")
            .should()
            .dependOnClassesThat(resideInAPackage("holloway.units.."));
    assertThrows(AssertionError.class, () -> wrong.check(classes));
  }
}
