package holloway;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/**
 * Only `gl` knows OpenGL, windows and the panels' library; what is drawn knows nothing of the app.
 */
@AnalyzeClasses(packages = "holloway", importOptions = ImportOption.DoNotIncludeTests.class)
final class LayersTest {
  @ArchTest
  static final ArchRule ONLY_GL_DRAWS =
      noClasses()
          .that()
          .resideOutsideOfPackage("holloway.gl..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.lwjgl..");

  @ArchTest
  static final ArchRule GL_KNOWS_SHEETS_ONLY =
      noClasses()
          .that()
          .resideInAPackage("holloway.gl..")
          .should()
          .dependOnClassesThat(
              com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage("holloway..")
                  .and(
                      com.tngtech.archunit.base.DescribedPredicate.not(
                          com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage(
                              "holloway.gl..", "holloway.look..")))
                  .forSubtype());
}
