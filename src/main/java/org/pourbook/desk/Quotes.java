package org.pourbook.desk;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pourbook.buy.Asked;
import org.pourbook.buy.Price;
import org.pourbook.buy.PriceBook;
import org.pourbook.buy.QuoteLine;
import org.pourbook.buy.Quoted;
import org.pourbook.buy.Quoting;
import org.pourbook.cut.CutPlanner;
import org.pourbook.job.Job;
import org.pourbook.job.Setting;
import org.pourbook.problem.Problem;

/** The supplier's counter. */
public final class Quotes {

  private Quotes() {}

  /** Returns the names of the suppliers in a list, in its order. */
  public static List<String> suppliers(PriceBook list) {
    return list.prices().stream().map(Price::supplier).distinct().toList();
  }

  /**
   * Returns a supplier's quotation for a batch, whose prices are the list.
   *
   * @param supplier as the list writes it; the list holds a price of that supplier
   * @param date of the quotation, on which the prices must hold
   * @param problems of the input, to which those of the stock are added
   */
  public static Quote quote(
      Batch batch,
      String supplier,
      LocalDate date,
      List<Problem> problems,
      CutPlanner planner,
      String version) {
    PriceBook list = only(batch.prices(), supplier);
    Quoted quoted = Quoting.quote(batch.jobs(), list, date, planner);
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(quoted.problems());
    all.sort(Comparator.comparing(Problem::place));
    return new Quote(
        batch,
        list.supplierOf(list.prices().get(0)),
        date,
        validUntil(quoted, batch.jobs(), date),
        request(quoted.asked()),
        quoted,
        all,
        version);
  }

  private static PriceBook only(PriceBook book, String supplier) {
    return new PriceBook(
        book.prices().stream().filter(price -> price.supplier().equals(supplier)).toList(),
        book.suppliers(),
        book.currency());
  }

  /** Returns the day on which the first price used runs out, else Quotation days from the date. */
  private static LocalDate validUntil(Quoted quoted, List<Job> jobs, LocalDate date) {
    int days =
        jobs.stream()
            .mapToInt(job -> (int) job.practice().number(Setting.QUOTATION_DAYS))
            .min()
            .orElse(0);
    return used(quoted)
        .flatMap(price -> price.validUntil().stream())
        .min(Comparator.naturalOrder())
        .orElse(date.plusDays(days));
  }

  private static Stream<Price> used(Quoted quoted) {
    return quoted.lines().stream().map(QuoteLine::price).flatMap(Optional::stream);
  }

  private static String request(List<Asked> asked) {
    String words = asked.stream().map(Asked::inWords).sorted().collect(Collectors.joining("\n"));
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(words.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
