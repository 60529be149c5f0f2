package faultfinch;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;

/** The walls inside trainer-ui, above all the one between a running attempt and its answer. */
class TrainerUiRulesTest {

  private static final JavaClasses OWN = new ClassFileImporter().importPath("target/classes");

  private static final String ENTRY = "faultfinch\\.app\\.Main";

  @Test
  void floors_anyClass_usesOnlyFloorsBelow() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .withOptionalLayers(true)
        .layer("fx")
        .definedBy("faultfinch.fx..")
        .layer("casebook")
        .definedBy("faultfinch.casebook..")
        .layer("workbench")
        .definedBy("faultfinch.workbench..")
        .layer("debrief")
        .definedBy("faultfinch.debrief..")
        .layer("app")
        .definedBy("faultfinch.app..")
        .whereLayer("fx")
        .mayNotAccessAnyLayer()
        .whereLayer("casebook")
        .mayOnlyAccessLayers("fx")
        .whereLayer("workbench")
        .mayOnlyAccessLayers("fx")
        .whereLayer("debrief")
        .mayOnlyAccessLayers("fx")
        .whereLayer("app")
        .mayOnlyAccessLayers("fx", "casebook", "workbench", "debrief")
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
  void screens_running_cannotReachTheAnswer() {
    noClasses()
        .that()
        .resideOutsideOfPackage("faultfinch.app..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "faultfinch.machine..",
            "faultfinch.fault..",
            "faultfinch.diagnosis..",
            "faultfinch.format..")
        .allowEmptyShould(true)
        .check(OWN);
  }

  @Test
  void viewModel_any_knowsNoNodeAndNoWindow() {
    noClasses()
        .that()
        .haveNameMatching(".*ViewModel(\\$.*)?")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("javafx.scene..", "javafx.stage..")
        .allowEmptyShould(true)
        .check(OWN);
  }

  @Test
  void entry_forACommand_namesNoWindowType() {
    noClasses()
        .that()
        .haveNameMatching(ENTRY)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("javafx..", "atlantafx..", "java.awt..")
        .check(OWN);
  }

  @Test
  void console_outsideTheEntry_isNeverTouched() {
    noClasses()
        .that()
        .haveNameNotMatching(ENTRY)
        .should(ACCESS_STANDARD_STREAMS)
        .allowEmptyShould(true)
        .check(OWN);
    noClasses()
        .that()
        .haveNameNotMatching(ENTRY)
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
}
