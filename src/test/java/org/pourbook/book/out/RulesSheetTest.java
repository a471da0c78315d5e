package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.lang.reflect.Method;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.takeoff.Source;

class RulesSheetTest {

  @Test
  void everyClassWithARuleIsListed() {
    List<String> found =
        new ClassFileImporter()
            .withImportOption(new DoNotIncludeTests()).importPackages("org.pourbook").stream()
                .filter(RulesSheetTest::hasRule)
                .map(type -> type.getName().substring("org.pourbook.".length()))
                .sorted()
                .toList();
    assertEquals(found, RuleClasses.NAMES);
  }

  private static boolean hasRule(JavaClass type) {
    return type.getMethods().stream()
        .anyMatch(
            method ->
                method.isAnnotatedWith(Source.class) || method.isAnnotatedWith(Source.List.class));
  }

  @Test
  void everyDocumentThatARuleCitesIsAmongTheSources() {
    Documents documents = Documents.read();
    for (Class<?> type : RuleClasses.all()) {
      for (Method method : type.getDeclaredMethods()) {
        for (Source source : method.getAnnotationsByType(Source.class)) {
          assertTrue(
              source.key().isEmpty() || documents.has(source.key()),
              method + " cites " + source.key());
        }
      }
    }
  }

  @Test
  void rulesStandInTheOrderOfTheirNumbers() {
    List<String> rules =
        new RulesSheet(RuleClasses.all(), Documents.read())
            .spec().rows().stream().map(RulesSheet.Row::rule).distinct().toList();
    assertTrue(rules.indexOf("CON-2") < rules.indexOf("CON-10") || !rules.contains("CON-10"));
    assertTrue(rules.indexOf("BAR-1") < rules.indexOf("BAR-2"));
    assertTrue(rules.size() > 20, rules::toString);
  }
}
