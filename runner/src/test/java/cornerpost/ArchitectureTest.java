package cornerpost;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A package imports only those above it in this list. */
class ArchitectureTest {
  private static final List<String> ORDER =
      List.of(
          "measure",
          "trace",
          "fact",
          "scope",
          "takeoff",
          "price",
          "work",
          "schedule",
          "risk",
          "finance",
          "check",
          "plan",
          "workbook",
          "report",
          "app");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("cornerpost");

  @Test
  void packages_import_only_those_above_them() {
    assertThat(CLASSES.size()).isGreaterThan(50);
    for (int i = 0; i < ORDER.size() - 1; i++) {
      var below =
          ORDER.subList(i + 1, ORDER.size()).stream().map(p -> "cornerpost." + p + "..").toList();
      noClasses()
          .that()
          .resideInAPackage("cornerpost." + ORDER.get(i) + "..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(below.toArray(String[]::new))
          .check(CLASSES);
    }
  }

  @Test
  void the_engine_knows_nothing_of_ours() {
    noClasses()
        .that()
        .resideInAPackage("cornerpost.schedule..")
        .should()
        .dependOnClassesThat(
            com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage("cornerpost..")
                .and(
                    com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage(
                        "cornerpost.schedule..")))
        .check(CLASSES);
  }

  @Test
  void libraries_stay_in_their_packages() {
    only("org.apache.poi..", "cornerpost.workbook..");
    only("freemarker..", "cornerpost.report..");
    only("org.jgrapht..", "cornerpost.schedule..");
  }

  private static void only(String library, String home) {
    noClasses()
        .that()
        .resideOutsideOfPackage(home)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(CLASSES);
  }

  @Test
  void only_the_command_line_prints_exits_or_reads_the_clock() {
    noClasses()
        .that()
        .resideOutsideOfPackage("cornerpost.app..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .orShould()
        .callMethod(java.time.LocalDate.class, "now")
        .orShould()
        .callMethod(java.time.LocalDateTime.class, "now")
        .orShould()
        .callMethod(java.time.Instant.class, "now")
        .orShould()
        .callMethod(Math.class, "random")
        .check(CLASSES);
  }

  @Test
  void a_broken_rule_is_noticed() {
    var planted =
        classes()
            .that()
            .resideInAPackage("cornerpost.scope..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAPackage("java..");
    assertThatThrownBy(() -> planted.check(CLASSES)).isInstanceOf(AssertionError.class);
  }
}
