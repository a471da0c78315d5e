package org.pourbook.book.out;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.pourbook.takeoff.Source;

/** Every rule with its source and how sure it is, as the code that computes it declares them. */
final class RulesSheet {

  static final String NAME = "Rules";

  private final SheetSpec<Row> spec;
  private final Map<String, Cell> links;

  record Row(String rule, String says, String value, String source, String standing) {}

  RulesSheet(List<Class<?>> ruleClasses, Documents documents) {
    Set<Row> rows = new LinkedHashSet<>();
    ruleClasses.stream()
        .flatMap(RulesSheet::sources)
        .map(source -> row(source, documents))
        .forEach(rows::add);
    List<Row> sorted = new ArrayList<>(rows);
    sorted.sort(
        Comparator.comparing((Row row) -> family(row.rule()))
            .thenComparingInt(row -> number(row.rule()))
            .thenComparing(Row::says)
            .thenComparing(Row::source)
            .thenComparing(Row::value) // methods come in no certain order
            .thenComparing(Row::standing));
    this.links = links(sorted);
    this.spec =
        SheetSpec.landscape(
            NAME,
            "The rules, where each comes from, and how sure that is: published, from memory, or"
                + " common practice.",
            List.of(
                Column.text("Rule", 10, Row::rule),
                Column.text("Says", 70, Row::says),
                Column.text("Value", 26, Row::value),
                Column.text("Source", 40, Row::source),
                Column.text("Standing", 16, Row::standing)),
            sorted);
  }

  private static Map<String, Cell> links(List<Row> rows) {
    Map<String, Cell> links = new HashMap<>();
    for (int i = 0; i < rows.size(); i++) {
      String rule = rows.get(i).rule();
      int row = SheetSpec.FIRST_ROW + i;
      links.putIfAbsent(
          rule, Cell.formula("HYPERLINK(\"#" + NAME + "!A" + row + "\",\"" + rule + "\")", rule));
    }
    return links;
  }

  private static Stream<Source> sources(Class<?> ruleClass) {
    return Stream.of(ruleClass.getDeclaredMethods()).map(RulesSheet::sources).flatMap(Stream::of);
  }

  private static Source[] sources(Method method) {
    return method.getAnnotationsByType(Source.class);
  }

  private static Row row(Source source, Documents documents) {
    String from = documents.cited(source.key(), source.at());
    return new Row(source.rule(), source.says(), source.value(), from, source.standing().label());
  }

  private static String family(String rule) {
    int dash = rule.indexOf('-');
    return dash < 0 ? rule : rule.substring(0, dash);
  }

  private static int number(String rule) {
    String digits = rule.substring(rule.indexOf('-') + 1);
    return digits.matches("\\d{1,4}") ? Integer.parseInt(digits) : 0;
  }

  SheetSpec<Row> spec() {
    return spec;
  }

  /** Returns a rule's id that leads to its row, plain where it has none. */
  Cell link(String rule) {
    return links.getOrDefault(rule, Cell.of(rule));
  }
}
