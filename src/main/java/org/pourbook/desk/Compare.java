package org.pourbook.desk;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pourbook.buy.Comparing;
import org.pourbook.buy.Quotation;
import org.pourbook.measure.Greatest;
import org.pourbook.measure.Money;
import org.pourbook.measure.NumberText;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.MaterialKey;

/** The builder's desk, when quotations have come back. */
public final class Compare {

  private Compare() {}

  /**
   * Returns why quotations cannot be compared: of different requests, in different currencies, or
   * two of one supplier, or of more money than is counted; empty where they can.
   *
   * @param names of their files, in the same order
   */
  public static Optional<String> hindrance(List<Quotation> quotations, List<String> names) {
    for (int other = 1; other < quotations.size(); other++) {
      for (int one = 0; one < other; one++) {
        Optional<String> why = hindrance(quotations.get(one), quotations.get(other));
        if (why.isPresent()) {
          return Optional.of(names.get(one) + " and " + names.get(other) + " " + why.get());
        }
      }
    }
    double most = 0;
    for (int i = 0; i < quotations.size(); i++) {
      most += most(quotations.get(i));
      if (most > Greatest.BATCH.doubleValue()) {
        return Optional.of(
            names.get(i)
                + " brings what all quotations may come to above "
                + NumberText.text(Greatest.BATCH)
                + ": look at its amounts and terms");
      }
    }
    return Optional.empty();
  }

  /** Returns what a quotation comes to at most, were each row a delivery of its own. */
  private static double most(Quotation quotation) {
    double stop =
        Stream.of(quotation.supplier().deliveryFee(), quotation.supplier().minimumOrder())
            .flatMap(Optional::stream)
            .mapToDouble(Compare::size)
            .sum();
    double anotherStop =
        quotation.anotherStop().values().stream().mapToDouble(Compare::size).max().orElse(0);
    return quotation.rows().stream()
        .mapToDouble(row -> size(row.amount()) + size(row.truckFees()) + stop + anotherStop)
        .sum();
  }

  private static double size(Money money) {
    return Math.abs(money.amount().doubleValue());
  }

  private static Optional<String> hindrance(Quotation one, Quotation other) {
    if (!one.request().equalsIgnoreCase(other.request())) {
      return Optional.of(
          "answer different requests: have both quoted from the same jobs, then compare them");
    }
    if (!one.currency().equalsIgnoreCase(other.currency())) {
      return Optional.of(
          "are in different currencies: " + one.currency() + " and " + other.currency());
    }
    if (MaterialKey.normal(one.name()).equals(MaterialKey.normal(other.name()))) {
      return Optional.of("are both of " + one.name() + ": name one quotation of each supplier");
    }
    return Optional.empty();
  }

  /** Returns the comparison of quotations that nothing hinders. */
  public static Comparison compare(
      List<Quotation> quotations,
      List<Batch.InputFile> files,
      List<Problem> problems,
      String version) {
    return new Comparison(quotations, Comparing.compare(quotations), problems, files, version);
  }
}
