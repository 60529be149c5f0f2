package faultfinch;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;

/** The walls inside scenarios: its floors, and that it knows neither screen nor console. */
class ScenariosRulesTest {

  private static final JavaClasses OWN = new ClassFileImporter().importPath("target/classes");

  @Test
  void floors_anyClass_usesOnlyFloorsBelow() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .withOptionalLayers(true)
        .layer("format")
        .definedBy("faultfinch.format..")
        .layer("library")
        .definedBy("faultfinch.library..")
        .layer("attempt")
        .definedBy("faultfinch.attempt..")
        .layer("desk")
        .definedBy("faultfinch.desk..")
        .layer("author")
        .definedBy("faultfinch.author..")
        .layer("cli")
        .definedBy("faultfinch.cli..")
        .whereLayer("format")
        .mayNotAccessAnyLayer()
        .whereLayer("library")
        .mayOnlyAccessLayers("format")
        .whereLayer("attempt")
        .mayOnlyAccessLayers("format", "library")
        .whereLayer("desk")
        .mayOnlyAccessLayers("format", "library")
        .whereLayer("author")
        .mayOnlyAccessLayers("format", "library")
        .whereLayer("cli")
        .mayOnlyAccessLayers("format", "library", "attempt", "desk", "author")
        .ensureAllClassesAreContainedInArchitecture()
        .allowEmptyShould(true)
        .check(OWN);
  }

  @Test
  void packages_followed_neverComeBackToTheStart() {
    slices()
        .matching("faultfinch.(**)")
        .should()
        .beFreeOfCycles()
        .allowEmptyShould(true)
        .check(OWN);
  }

  @Test
  void console_anyClass_neitherPrintsNorEndsTheProcess() {
    noClasses().should(ACCESS_STANDARD_STREAMS).allowEmptyShould(true).check(OWN);
    noClasses()
        .should()
        .accessField(System.class, "in")
        .orShould()
        .callMethod(System.class, "console")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .orShould()
        .callMethod(Runtime.class, "exit", int.class)
        .orShould()
        .callMethod(Runtime.class, "halt", int.class)
        .allowEmptyShould(true)
        .check(OWN);
  }

  @Test
  void screen_anyClass_isUnknown() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("javafx..", "java.awt..", "javax.swing..", "javax.imageio..")
        .allowEmptyShould(true)
        .check(OWN);
  }
}
