package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.pourbook.problem.Standing;

/** Every key that a rule cites stands in sources.md, and every key there is cited. */
class SourcesTest {

  private static final Path SOURCES = Path.of("src/site/markdown/sources.md");

  /** First cell of a row of the table of documents, which is the first table of the page. */
  private static final Pattern ROW = Pattern.compile("\\| ([a-z0-9-]+) \\|.*");

  @Test
  void sourcesHoldsExactlyTheKeysThatRulesCite() throws IOException {
    Set<String> cited =
        sources().stream()
            .map(Source::key)
            .filter(key -> !key.isEmpty())
            .collect(Collectors.toCollection(TreeSet::new));

    assertFalse(cited.isEmpty());
    assertEquals(cited, keys());
  }

  @Test
  void onlyCommonPracticeHasNoDocument() {
    List<String> without =
        sources().stream()
            .filter(source -> source.key().isEmpty() && source.standing() == Standing.PUBLISHED)
            .map(source -> source.rule() + ": " + source.says())
            .toList();

    assertEquals(List.of(), without);
  }

  private static Set<String> keys() throws IOException {
    Set<String> keys = new TreeSet<>();
    for (String line : Files.readAllLines(SOURCES)) {
      Matcher row = ROW.matcher(line);
      if (row.matches() && !row.group(1).equals("key") && !row.group(1).startsWith("-")) {
        keys.add(row.group(1));
      }
    }
    return keys;
  }

  private static List<Source> sources() {
    return new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.pourbook.takeoff.rule")
            .stream()
            .map(JavaClass::reflect)
            .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
            .flatMap(SourcesTest::of)
            .toList();
  }

  private static java.util.stream.Stream<Source> of(Method method) {
    return Arrays.stream(method.getAnnotationsByType(Source.class));
  }
}
