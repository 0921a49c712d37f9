package holloway.arch;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.elements.ClassesShould;
import holloway.geometry.Overlay;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Habits that keep the engine a library with the same bytes for the same input. */
class HabitsTest {
  private static JavaClasses classes;

  @BeforeAll
  static void read() {
    classes =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("holloway");
  }

  private static ClassesShould outsideCli() {
    return noClasses().that().resideOutsideOfPackage("holloway.cli..").should();
  }

  private static void check(ArchRule rule) {
    rule.check(classes);
  }

  @Test
  void onlyTheHouseFileReaderKnowsYaml() {
    check(
        noClasses()
            .that()
            .resideOutsideOfPackage("holloway.housefile..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.snakeyaml.."));
  }

  @Test
  void nobodyElsePrints() {
    check(
        noClasses()
            .that()
            .resideOutsideOfPackage("holloway.cli..")
            .should(ACCESS_STANDARD_STREAMS));
  }

  @Test
  void chanceIsAlwaysSeeded() {
    check(outsideCli().callConstructor(Random.class));
    check(outsideCli().callMethod(Math.class, "random"));
    check(outsideCli().callMethod(ThreadLocalRandom.class, "current"));
    check(outsideCli().callMethod(UUID.class, "randomUUID"));
  }

  @Test
  void nobodyElseReadsAClock() {
    check(outsideCli().callMethod(System.class, "currentTimeMillis"));
    check(outsideCli().callMethod(Instant.class, "now"));
    check(outsideCli().callMethod(LocalDate.class, "now"));
    check(outsideCli().callMethod(LocalDateTime.class, "now"));
    check(outsideCli().dependOnClassesThat().areAssignableTo(Clock.class));
  }

  /** The geometry's own ways of cutting give up where lines all but coincide. */
  @Test
  void outlinesAreCutByOneClass() {
    check(
        noClasses()
            .that()
            .doNotHaveFullyQualifiedName(Overlay.class.getName())
            .should()
            .callMethod(Geometry.class, "intersection", Geometry.class)
            .orShould()
            .callMethod(Geometry.class, "difference", Geometry.class)
            .orShould()
            .callMethod(Geometry.class, "symDifference", Geometry.class)
            .orShould()
            .callMethod(Geometry.class, "union", Geometry.class)
            .orShould()
            .callMethod(Geometry.class, "union")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(UnaryUnionOp.class));
  }

  /** Baseboard is a trade word; a class named BaseSomething is not. */
  @Test
  void namesSayWhatAThingIs() {
    check(
        noClasses()
            .should()
            .haveNameMatching(".*[.$](\\w*(Util|Utils|Helper|Manager)|Base|Base[A-Z]\\w*)"));
  }
}
