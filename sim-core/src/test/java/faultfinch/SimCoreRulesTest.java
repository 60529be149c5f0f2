package faultfinch;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.Collections;
import java.util.Date;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import org.junit.jupiter.api.Test;

/** The walls inside sim-core, and what makes its results the same on every run. */
class SimCoreRulesTest {

  private static final JavaClasses OWN = new ClassFileImporter().importPath("target/classes");

  @Test
  void floors_anyClass_usesOnlyFloorsBelow() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .withOptionalLayers(true)
        .layer("signal")
        .definedBy("faultfinch.signal..")
        .layer("part")
        .definedBy("faultfinch.part..")
        .layer("board")
        .definedBy("faultfinch.board..")
        .layer("fault")
        .definedBy("faultfinch.fault..")
        .layer("machine")
        .definedBy("faultfinch.machine..")
        .layer("bench")
        .definedBy("faultfinch.bench..")
        .layer("symptom")
        .definedBy("faultfinch.symptom..")
        .layer("diagnosis")
        .definedBy("faultfinch.diagnosis..")
        .layer("judging")
        .definedBy("faultfinch.judging..")
        .whereLayer("signal")
        .mayNotAccessAnyLayer()
        .whereLayer("part")
        .mayOnlyAccessLayers("signal")
        .whereLayer("board")
        .mayOnlyAccessLayers("signal", "part")
        .whereLayer("fault")
        .mayOnlyAccessLayers("signal", "part", "board")
        .whereLayer("machine")
        .mayOnlyAccessLayers("signal", "part", "board", "fault")
        .whereLayer("bench")
        .mayOnlyAccessLayers("signal", "part", "board", "fault", "machine", "symptom")
        .whereLayer("symptom")
        .mayOnlyAccessLayers("signal", "part", "board", "fault", "machine")
        .whereLayer("diagnosis")
        .mayOnlyAccessLayers("signal", "part", "board", "fault", "machine", "bench", "symptom")
        .whereLayer("judging")
        .mayOnlyAccessLayers(
            "signal", "part", "board", "fault", "machine", "bench", "symptom", "diagnosis")
        .allowEmptyShould(true)
        .check(OWN);
  }

  @Test
  void floors_anyClass_standsOnOneOfThem() {
    classes()
        .should()
        .resideInAnyPackage(
            "faultfinch.signal..",
            "faultfinch.part..",
            "faultfinch.board..",
            "faultfinch.fault..",
            "faultfinch.machine..",
            "faultfinch.bench..",
            "faultfinch.symptom..",
            "faultfinch.diagnosis..",
            "faultfinch.judging..")
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

  @Test
  void clock_anyClass_isNeverRead() {
    noClasses()
        .should()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callConstructor(Date.class)
        .orShould()
        .dependOnClassesThat(belongToAnyOf(java.time.Clock.class, java.util.Calendar.class))
        .orShould()
        .callMethodWhere(target(owner(resideInAPackage("java.time.."))).and(target(name("now"))))
        .allowEmptyShould(true)
        .check(OWN);
  }

  /** A generator with a seed is welcome: same seed, same numbers. */
  @Test
  void chance_anyClass_isNeverDrawnWithoutASeed() {
    noClasses()
        .should()
        .callConstructor(Random.class)
        .orShould()
        .callConstructor(SplittableRandom.class)
        .orShould()
        .callMethod(Math.class, "random")
        .orShould()
        .callMethod(StrictMath.class, "random")
        .orShould()
        .callMethod(UUID.class, "randomUUID")
        .orShould()
        .callMethod(Collections.class, "shuffle", List.class)
        .orShould()
        .dependOnClassesThat(
            belongToAnyOf(ThreadLocalRandom.class, java.security.SecureRandom.class))
        .orShould()
        .dependOnClassesThat()
        .resideInAPackage("java.util.random..")
        .allowEmptyShould(true)
        .check(OWN);
  }
}
