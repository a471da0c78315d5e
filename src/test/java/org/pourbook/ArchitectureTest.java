package org.pourbook;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.List;
import java.util.Set;
import org.pourbook.takeoff.Source;

@AnalyzeClasses(packages = "org.pourbook", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

  /** Every package from top to bottom: each may use those after it and none before it. */
  private static final List<String> TOP_TO_BOTTOM =
      List.of(
          "cli", "book", "desk", "ticket", "buy", "cut", "plan", "takeoff", "outline", "job",
          "measure", "problem");

  private static final String[] PURE =
      TOP_TO_BOTTOM.subList(TOP_TO_BOTTOM.indexOf("desk"), TOP_TO_BOTTOM.size()).stream()
          .map(ArchitectureTest::within)
          .toArray(String[]::new);

  /** Raise it as the code grows: it shows that the rules below look at something. */
  private static final int FEWEST_CLASSES = 50;

  @ArchTest
  static void the_rules_see_the_classes(JavaClasses classes) {
    assertTrue(
        classes.size() >= FEWEST_CLASSES,
        () -> "only " + classes.size() + " classes were imported: the rules check next to nothing");
  }

  @ArchTest
  static final ArchRule packages_are_used_from_the_top_down =
      layers().because("a layer that knows those above it cannot be understood or tested alone");

  @ArchTest
  static final ArchRule only_book_knows_the_file_formats =
      noClasses()
          .that()
          .resideOutsideOfPackage(within("book"))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.poi..", "org.apache.commons.csv..")
          .because("the estimate must run without a workbook, and help without loading POI");

  @ArchTest
  static final ArchRule only_outline_knows_jts =
      noClasses()
          .that()
          .resideOutsideOfPackage(within("outline"))
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.locationtech..")
          .because("JTS computes in double, so outline alone turns its results into exact lengths");

  @ArchTest
  static final ArchRule pure_packages_do_no_input_or_output =
      noClasses()
          .that()
          .resideInAnyPackage(PURE)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.io..", "java.nio.file..", "java.util.logging..", "picocli..")
          .because("a batch is data in and data out; files and streams belong to book and cli");

  @ArchTest
  static final ArchRule pure_packages_read_no_clock =
      noClasses()
          .that()
          .resideInAnyPackage(PURE)
          .should()
          .accessTargetWhere(readsTheClock())
          .because("the same workbook must give the same bytes tomorrow");

  @ArchTest
  static final ArchRule pure_packages_draw_no_random_numbers =
      noClasses()
          .that()
          .resideInAnyPackage(PURE)
          .should()
          .accessTargetWhere(drawsRandomNumbers())
          .because("the same workbook must give the same bytes on every run");

  @ArchTest
  static final ArchRule pure_packages_ignore_the_default_locale =
      noClasses()
          .that()
          .resideInAnyPackage(PURE)
          .should()
          .accessTargetWhere(usesTheDefaultLocale())
          .because("the same workbook must give the same bytes on every machine");

  @ArchTest
  static final ArchRule pure_packages_keep_no_mutable_statics =
      fields()
          .that()
          .areDeclaredInClassesThat()
          .resideInAnyPackage(PURE)
          .and()
          .areStatic()
          .should()
          .beFinal()
          .because("one job of a batch must not change the result of the next");

  @ArchTest
  static final ArchRule only_cli_uses_the_standard_streams =
      noClasses()
          .that()
          .resideOutsideOfPackage(within("cli"))
          .should(ACCESS_STANDARD_STREAMS)
          .because("scripts read standard output, so one package decides what goes there");

  @ArchTest
  static final ArchRule every_rule_cites_its_source =
      methods()
          .that()
          .areDeclaredInClassesThat()
          .resideInAPackage("org.pourbook.takeoff.rule..")
          .and()
          .arePublic()
          .and()
          .areStatic()
          .and()
          .areDeclaredInClassesThat()
          .areNotEnums()
          .should()
          .beAnnotatedWith(Source.class)
          .orShould()
          .beAnnotatedWith(Source.List.class)
          .because("a reader must be able to check each rule against the text it came from");

  private static String within(String name) {
    return "org.pourbook." + name + "..";
  }

  private static LayeredArchitecture layers() {
    LayeredArchitecture layers =
        layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("org.pourbook..")
            .withOptionalLayers(true);
    for (String name : TOP_TO_BOTTOM) {
      layers = layers.layer(name).definedBy(within(name));
    }
    for (int i = 0; i < TOP_TO_BOTTOM.size(); i++) {
      String name = TOP_TO_BOTTOM.get(i);
      layers =
          i == 0
              ? layers.whereLayer(name).mayNotBeAccessedByAnyLayer()
              : layers
                  .whereLayer(name)
                  .mayOnlyBeAccessedByLayers(TOP_TO_BOTTOM.subList(0, i).toArray(String[]::new));
    }
    return layers.ensureAllClassesAreContainedInArchitecture();
  }

  private static DescribedPredicate<JavaAccess<?>> readsTheClock() {
    return describe(
        "the clock is read",
        access -> {
          String owner = access.getTargetOwner().getName();
          String name = access.getTarget().getName();
          return (owner.startsWith("java.time.") && name.equals("now"))
              || owner.equals("java.time.Clock")
              || owner.equals("java.util.Date")
              || owner.equals("java.util.Calendar")
              || (owner.equals("java.lang.System")
                  && (name.equals("currentTimeMillis") || name.equals("nanoTime")));
        });
  }

  private static DescribedPredicate<JavaAccess<?>> drawsRandomNumbers() {
    Set<String> sources =
        Set.of(
            "java.util.Random",
            "java.util.SplittableRandom",
            "java.util.concurrent.ThreadLocalRandom",
            "java.security.SecureRandom");
    return describe(
        "a random number is drawn",
        access -> {
          String owner = access.getTargetOwner().getName();
          String name = access.getTarget().getName();
          return sources.contains(owner)
              || owner.startsWith("java.util.random.")
              || (owner.equals("java.lang.Math") && name.equals("random"))
              || (owner.equals("java.util.UUID") && name.equals("randomUUID"))
              || (owner.equals("java.util.Collections") && name.equals("shuffle"));
        });
  }

  private static DescribedPredicate<JavaAccess<?>> usesTheDefaultLocale() {
    return describe(
        "the default locale is used",
        access -> {
          String owner = access.getTargetOwner().getName();
          String name = access.getTarget().getName();
          return (owner.equals("java.util.Locale") && name.equals("getDefault"))
              || (owner.equals("java.lang.String") && name.equals("formatted"))
              || (owner.equals("java.lang.String")
                  && name.equals("format")
                  && !access
                      .getTarget()
                      .getFullName()
                      .startsWith("java.lang.String.format(java.util.Locale"));
        });
  }
}
