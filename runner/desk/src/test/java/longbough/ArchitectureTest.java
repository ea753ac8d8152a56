package longbough;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import longbough.model.process.Process;
import longbough.runner.validate.lab.GeneralNumbers;
import longbough.shared.source.ParameterLibrary;
import org.junit.jupiter.api.Test;

/**
 * Who may know whom. A rule that finds no class to look at fails too, so that none goes blind when
 * a package is renamed.
 */
class ArchitectureTest {

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("longbough");

  @Test
  void modulesKnowOnlyWhatIsBelowThem() {
    check(
        layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("shared")
            .definedBy("longbough.shared..")
            .layer("model")
            .definedBy("longbough.model..")
            .layer("runner")
            .definedBy("longbough.runner..")
            .whereLayer("runner")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("model")
            .mayOnlyBeAccessedByLayers("runner")
            .whereLayer("shared")
            .mayOnlyBeAccessedByLayers("model", "runner"));
  }

  @Test
  void packagesFormNoCycle() {
    check(slices().matching("longbough.(**)").should().beFreeOfCycles());
  }

  @Test
  void noProcessKnowsAnother() {
    check(
        classes()
            .that()
            .resideInAPackage("longbough.model.process..")
            .should(knowNoOtherProcess())
            .because("processes meet in the state and in YearlyCycle only"));
  }

  @Test
  void everyProcessStandsInItsPackage() {
    check(
        classes()
            .that()
            .implement(Process.class)
            .should()
            .resideInAPackage("longbough.model.process.."));
  }

  @Test
  void modelNeedsNothingButTheLanguageAndShared() {
    check(
        classes()
            .that()
            .resideInAPackage("longbough.model..")
            .should()
            .onlyDependOnClassesThat(
                resideInAnyPackage("longbough.model..", "longbough.shared..", "java.lang..")
                    .or(resideInAPackage("java.util..")))
            .because(
                "files, network, clock, tables, charts and the command line belong in runner"));
  }

  @Test
  void modelIsPure() {
    check(
        noClasses()
            .that()
            .resideInAPackage("longbough.model..")
            .should()
            .accessTargetWhere(isAmbient())
            .because("the same input must give the same output on every machine and at any time"));
  }

  @Test
  void sharedUsesNoLibraryButTheCsvReader() {
    check(
        classes()
            .that()
            .resideInAPackage("longbough.shared..")
            .should()
            .onlyDependOnClassesThat(
                resideInAnyPackage("longbough.shared..", "java..", "de.siegmar.fastcsv..")));
  }

  @Test
  void onlyTheCommandLineKnowsItsLibrary() {
    check(
        noClasses()
            .that()
            .resideOutsideOfPackage("longbough.runner.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli.."));
  }

  @Test
  void experimentsPlayWithTheNumbersBeingTried() {
    check(
        noClasses()
            .that()
            .resideInAPackage("longbough.runner.validate..")
            .and()
            .doNotHaveFullyQualifiedName(GeneralNumbers.class.getName())
            .should()
            .dependOnClassesThat()
            .belongToAnyOf(ParameterLibrary.class)
            .because("a fit tries other numbers; GeneralNumbers.table() has them"));
  }

  @Test
  void experimentsKeepNoTree() {
    check(
        noFields()
            .that()
            .areStatic()
            .and()
            .areDeclaredInClassesThat()
            .resideInAPackage("longbough.runner.validate.experiment..")
            .should()
            .haveRawType(resideInAPackage("longbough.runner.validate.lab.."))
            .because("a tree kept from an earlier play would have its numbers, not those tried"));
  }

  private static void check(ArchRule rule) {
    rule.check(CLASSES);
  }

  private static ArchCondition<JavaClass> knowNoOtherProcess() {
    return new ArchCondition<>("know no other process") {
      @Override
      public void check(JavaClass item, ConditionEvents events) {
        for (Dependency dependency : item.getDirectDependenciesFromSelf()) {
          JavaClass target = outermost(dependency.getTargetClass());
          boolean process = target.isAssignableTo(Process.class) && !target.isInterface();
          if (process && !target.equals(outermost(item))) {
            events.add(SimpleConditionEvent.violated(item, dependency.getDescription()));
          }
        }
      }
    };
  }

  private static JavaClass outermost(JavaClass type) {
    JavaClass at = type.getBaseComponentType();
    while (at.getEnclosingClass().isPresent()) {
      at = at.getEnclosingClass().get();
    }
    return at;
  }

  /**
   * Reaches for the console, the clock, the locale, the environment, threads or unseeded chance.
   */
  private static DescribedPredicate<JavaAccess<?>> isAmbient() {
    return describe(
        "is ambient (console, clock, locale, environment, threads, unseeded chance)",
        access -> isAmbient(access.getTarget()));
  }

  private static boolean isAmbient(AccessTarget target) {
    String owner = target.getOwner().getName();
    String member = target.getName();
    return switch (owner) {
      case "java.lang.System" -> !Set.of("arraycopy", "lineSeparator").contains(member);
      case "java.lang.String" ->
          Set.of("format", "formatted", "toLowerCase", "toUpperCase").contains(member)
              && !target.getFullName().contains("java.util.Locale");
      case "java.lang.Math" -> member.equals("random");
      case "java.util.Locale" -> Set.of("getDefault", "setDefault").contains(member);
      case "java.util.Random",
          "java.util.Date",
          "java.util.Calendar",
          "java.util.TimeZone",
          "java.util.UUID",
          "java.util.Scanner",
          "java.util.concurrent.ThreadLocalRandom",
          "java.lang.Thread",
          "java.lang.ThreadLocal",
          "java.lang.Runtime",
          "java.lang.ProcessBuilder" ->
          true;
      default -> owner.startsWith("java.util.logging.") || owner.startsWith("java.util.zip.");
    };
  }
}
