package org.pourbook.book.in;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.book.in.HeadedRows.Row;
import org.pourbook.desk.EarlierOrder;
import org.pourbook.desk.OrderBook;
import org.pourbook.measure.Money;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;
import org.pourbook.ticket.Ordered;

/** Reads an order workbook, or the supplement of one, that is to be revised. */
public final class EarlierOrders {

  private static final String SUMMARY = "Summary";
  private static final String ORDERS = "Orders";
  private static final String CUT_LIST = "Cut list";
  private static final String FROM = "From";

  /** What a cut list calls stock that is not bought. */
  private static final String ON_HAND = "on hand";

  private static final Pattern NUMBER = Pattern.compile("PB-(\\d{3,8})");
  private static final String TOTAL = "Total";

  private final List<Problem> problems = new ArrayList<>();

  private EarlierOrders() {}

  /**
   * Returns the order as the office left it. Problems of the input that it was made from are not
   * told again: what counts is what was ordered.
   *
   * @throws UnreadableFile if the file cannot be read, or is no order workbook
   */
  public static Checked<EarlierOrder> read(Path path) throws UnreadableFile {
    Checked<OrderBook> book = OrderReader.read(path);
    EarlierOrders reader = new EarlierOrders();
    Set<String> unreadable = new HashSet<>();
    for (Problem problem : book.problems()) {
      if (!problem.refused()) {
        reader.problems.add(problem);
      } else if (OrderReader.isOfMaterials(problem.place())) {
        unreadable.add(problem.job());
        reader.problems.add(
            new Problem(
                problem.place(),
                problem.job(),
                problem.found(),
                problem.expected(),
                Effect.JOB_LEFT_OUT));
      }
    }
    book.value().ordered().stream()
        .filter(row -> row.items().stream().anyMatch(EarlierOrders::isImpossible))
        .forEach(row -> reader.refuse(row, unreadable));
    reader.noteOnHand(path);
    Map<String, Money> totals = reader.totals(path, book.value().ordered());
    return new Checked<>(
        new EarlierOrder(book.value(), totals, lastOrder(path), unreadable), reader.problems);
  }

  /** Returns the highest number on the sheet Orders, so that no number is given twice. */
  private static int lastOrder(Path path) throws UnreadableFile {
    RawBook book = InputFiles.read(path, (name, all) -> HeadedRows.isNamed(name, ORDERS));
    return HeadedRows.of(book, ORDERS, Set.of("Order", "Line")).rows().stream()
        .map(row -> NUMBER.matcher(row.text("Order")))
        .filter(Matcher::matches)
        .mapToInt(number -> Integer.parseInt(number.group(1)))
        .max()
        .orElse(0);
  }

  /** Notes boards and bars that were on hand: where pieces change, a revision buys them anew. */
  private void noteOnHand(Path path) throws UnreadableFile {
    RawBook book = InputFiles.read(path, (name, all) -> HeadedRows.isNamed(name, CUT_LIST));
    Map<List<String>, BigDecimal> pieces = new LinkedHashMap<>();
    Map<List<String>, Row> first = new LinkedHashMap<>();
    for (Row row : HeadedRows.of(book, CUT_LIST, Set.of("Material", FROM)).rows()) {
      if (row.text(FROM).equals(ON_HAND)) {
        List<String> stock = List.of(row.text("Job"), row.text("Material"), row.text("Size"));
        first.putIfAbsent(stock, row);
        TicketCells.number(row.cell("Pieces of stock"))
            .ifPresent(count -> pieces.merge(stock, count, BigDecimal::add));
      }
    }
    pieces.forEach(
        (stock, count) ->
            problems.add(
                new Problem(
                    Objects.requireNonNull(first.get(stock)).place(FROM),
                    stock.get(0),
                    count.toPlainString()
                        + " pieces of "
                        + String.join(" ", stock.subList(1, 3)).strip()
                        + " on hand",
                    "stock that was ordered; where pieces have changed the supplement buys anew"
                        + " what was cut from these: take it off by hand",
                    Effect.NOTE)));
  }

  private static boolean isImpossible(Ordered.Item item) {
    return item.packs().signum() < 0 || !(item.packHolds() > 0);
  }

  private void refuse(Ordered row, Set<String> unreadable) {
    unreadable.add(row.job());
    problems.add(
        new Problem(
            Place.ofSheet(OrderReader.MATERIALS),
            row.job(),
            "Packs or Pack holds of " + row.key() + " below zero",
            "Packs zero or more, Pack holds above zero",
            Effect.JOB_LEFT_OUT));
  }

  /**
   * Returns the totals of the Summary; where it does not tell a job's, the sum of its Materials.
   */
  private Map<String, Money> totals(Path path, List<Ordered> ordered) throws UnreadableFile {
    Map<String, Money> totals = new LinkedHashMap<>();
    ordered.forEach(row -> totals.merge(row.job(), row.orderedAmount(), Money::plus));
    RawBook book = InputFiles.read(path, (name, all) -> HeadedRows.isNamed(name, SUMMARY));
    for (Row row : HeadedRows.of(book, SUMMARY, Set.of("Job", TOTAL)).rows()) {
      String job = row.text("Job");
      Optional<BigDecimal> total = TicketCells.number(row.cell(TOTAL));
      if (total.isPresent() && !job.isEmpty()) {
        totals.put(job, Money.rounded(total.get()));
      } else if (!job.isEmpty()) {
        problems.add(
            new Problem(
                row.place(TOTAL),
                job,
                CellWords.found(row.cell(TOTAL)),
                "a number in Total; the sum of its materials stands for it",
                Effect.NOTE));
      }
    }
    return totals;
  }
}
