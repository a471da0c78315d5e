package org.pourbook.buy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.buy.Quotation.LineKey;
import org.pourbook.buy.Quotation.Row;
import org.pourbook.measure.Money;

/** Quotations of one request laid side by side. */
public final class Comparing {

  private final List<Quotation> quotations;

  /** Rows of each line by supplier. */
  private final List<Map<LineKey, List<Row>>> rows = new ArrayList<>();

  private final Set<LineKey> keys = new LinkedHashSet<>();

  private Comparing(List<Quotation> quotations) {
    this.quotations = quotations;
    for (Quotation quotation : quotations) {
      Map<LineKey, List<Row>> byLine = new LinkedHashMap<>();
      for (Row row : quotation.rows()) {
        keys.add(row.line());
        byLine.computeIfAbsent(row.line(), k -> new ArrayList<>()).add(row);
      }
      rows.add(byLine);
    }
  }

  /**
   * Returns the comparison.
   *
   * @param quotations of one request in one currency, each of another supplier; at least one
   */
  public static Compared compare(List<Quotation> quotations) {
    return new Comparing(quotations).compared();
  }

  private Compared compared() {
    QuoteItems items = new QuoteItems(this, List.copyOf(keys));
    BestSplit split = BestSplit.of(quotations, items);
    List<Compared.Way> ways = new ArrayList<>();
    for (int i = 0; i < quotations.size(); i++) {
      ways.add(allFrom(i));
    }
    ways.add(split.way());
    return new Compared(
        quotations.stream().map(Quotation::name).toList(),
        keys.stream().map(this::line).toList(),
        ways,
        split.taken());
  }

  private Compared.Way allFrom(int supplier) {
    Quotation quotation = quotations.get(supplier);
    List<QuotedWay.Pick> picks =
        keys.stream()
            .filter(key -> offers(supplier, key))
            .flatMap(key -> rows(supplier, key).stream())
            .map(row -> new QuotedWay.Pick(quotation.supplier(), row))
            .toList();
    long missing = keys.stream().filter(key -> isMissing(supplier, key)).count();
    return QuotedWay.of(
        "all from " + quotation.name(), picks, (int) missing, "", this::anotherStop);
  }

  List<Row> rows(int supplier, LineKey key) {
    return rows.get(supplier).getOrDefault(key, List.of());
  }

  int suppliers() {
    return quotations.size();
  }

  Quotation quotation(int supplier) {
    return quotations.get(supplier);
  }

  /** Returns what a stop costs the builder of a job besides what is paid, as any quotation says. */
  Money anotherStop(String job) {
    return quotations.stream()
        .map(quotation -> quotation.anotherStop().getOrDefault(job, Money.ZERO))
        .max(Comparator.naturalOrder())
        .orElse(Money.ZERO);
  }

  /** Returns how much was asked of a line; 0 of what only one supplier's stock makes necessary. */
  double asked(LineKey key) {
    double most = 0;
    for (int i = 0; i < quotations.size(); i++) {
      for (Row row : rows(i, key)) {
        most = Math.max(most, row.asked().orElse(0));
      }
    }
    return most;
  }

  /** Returns whether a supplier offers all of a line; also where it needs none of it. */
  boolean offers(int supplier, LineKey key) {
    List<Row> ofLine = rows(supplier, key);
    return ofLine.isEmpty() ? asked(key) == 0 : ofLine.stream().noneMatch(Row::missing);
  }

  /** Returns whether a line asked for cannot be had from a supplier. */
  boolean isMissing(int supplier, LineKey key) {
    return asked(key) > 0 && !offers(supplier, key);
  }

  private Optional<Money> amount(int supplier, LineKey key) {
    return offers(supplier, key) && !rows(supplier, key).isEmpty()
        ? Optional.of(Money.sum(rows(supplier, key).stream().map(Row::amount).toList()))
        : Optional.empty();
  }

  private Compared.Line line(LineKey key) {
    List<Optional<Money>> amounts = new ArrayList<>();
    Optional<String> best = Optional.empty();
    Optional<Money> least = Optional.empty();
    for (int i = 0; i < quotations.size(); i++) {
      Optional<Money> amount = amount(i, key);
      amounts.add(amount);
      if (amount.isPresent() && least.filter(m -> m.compareTo(amount.get()) <= 0).isEmpty()) {
        least = amount;
        best = Optional.of(quotations.get(i).name());
      }
    }
    Row first = first(key);
    return new Compared.Line(first.job(), first.key(), asked(key), first.unit(), amounts, best);
  }

  /** Returns the first row of a line in any quotation. */
  Row first(LineKey key) {
    for (int i = 0; i < quotations.size(); i++) {
      if (!rows(i, key).isEmpty()) {
        return rows(i, key).get(0);
      }
    }
    throw new IllegalArgumentException("no line " + key);
  }
}
