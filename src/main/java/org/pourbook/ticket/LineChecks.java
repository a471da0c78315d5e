package org.pourbook.ticket;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pourbook.measure.Money;

/** What is wrong with a line as a whole: quantities and prices (TICK-2). */
final class LineChecks {

  private static final BigDecimal CENT = new BigDecimal("0.01");

  private final Function<String, Terms> terms;
  private final List<Finding> findings;

  LineChecks(Function<String, Terms> terms, List<Finding> findings) {
    this.terms = terms;
    this.findings = findings;
  }

  /** Returns the line matched, its findings added. */
  Matched line(Ordered ordered, List<Claim> claims) {
    double delivered = claims.stream().filter(Claim::delivered).mapToDouble(Claim::own).sum();
    double billed = claims.stream().mapToDouble(Claim::ownBilled).sum();
    Money billedAmount =
        Money.sum(
            claims.stream()
                .filter(Claim::billed)
                .map(Claim::money)
                .flatMap(Optional::stream)
                .toList());
    List<Finding> mine = new ArrayList<>();
    quantity(ordered, delivered, billed, billedAmount, mine);
    for (Claim claim : claims) {
      if (claim.billed()) {
        price(claim, mine);
      }
    }
    findings.addAll(mine);
    List<String> names = mine.stream().map(f -> f.name().label()).distinct().sorted().toList();
    return new Matched(
        ordered.job(),
        ordered.key(),
        ordered.unit(),
        ordered.estimated(),
        ordered.ordered(),
        delivered,
        billed,
        ordered.orderedAmount(),
        billedAmount,
        names.isEmpty() ? "as ordered" : String.join(", ", names));
  }

  private void quantity(
      Ordered ordered, double delivered, double billed, Money billedAmount, List<Finding> mine) {
    double asked = ordered.ordered();
    double tolerance = asked * terms.apply(ordered.job()).quantityPercent() / 100 + 1e-9;
    String told =
        "Ordered " + number(asked) + ", delivered " + number(delivered) + " " + ordered.unit();
    if (asked > 0 && delivered == 0) {
      mine.add(
          Findings.of(
              ordered,
              Finding.Name.NOT_DELIVERED,
              told + ". Ask when it comes, or for the order to be closed.",
              billed > 0 ? Optional.of(billedAmount) : Optional.empty()));
    } else if (delivered - asked > tolerance) {
      mine.add(
          Findings.of(
              ordered,
              Finding.Name.OVER_QUANTITY,
              told + ": more than was ordered. Ask who called for it.",
              worth(billed - asked, billed, billedAmount)));
    } else if (asked - delivered > tolerance) {
      mine.add(
          Findings.of(
              ordered,
              Finding.Name.UNDER_QUANTITY,
              told
                  + ": less than was ordered, billed "
                  + number(billed)
                  + ". Ask for the rest, or a credit.",
              worth(billed - delivered, billed, billedAmount)));
    } else if (billed - delivered > tolerance) {
      mine.add(
          Findings.of(
              ordered,
              Finding.Name.OVER_QUANTITY,
              told + ", billed " + number(billed) + ". Ask for a credit for what did not come.",
              worth(billed - delivered, billed, billedAmount)));
    }
  }

  private static Optional<Money> worth(double over, double billed, Money billedAmount) {
    return over > 1e-9 && billed > 0
        ? Optional.of(
            Money.rounded(
                billedAmount
                    .amount()
                    .multiply(BigDecimal.valueOf(over))
                    .divide(BigDecimal.valueOf(billed), 9, RoundingMode.HALF_UP)))
        : Optional.empty();
  }

  /** Compares prices of one own unit, since a bill may count in another unit than the order. */
  private void price(Claim claim, List<Finding> mine) {
    Ticket row = claim.ticket();
    Optional<BigDecimal> asked = claim.item().flatMap(Ordered.Item::unitPrice);
    Optional<BigDecimal> billed = row.priceBilled();
    double held = claim.item().map(Ordered.Item::packHolds).orElse(0.0);
    if (asked.isEmpty() || billed.isEmpty() || row.isPriceCredit() || held * claim.own() == 0) {
      return;
    }
    double orderUnits = claim.own() / claim.share().size() / row.quantity() / held;
    BigDecimal due =
        Math.abs(orderUnits - 1) < 1e-9
            ? asked.get()
            : asked.get().multiply(BigDecimal.valueOf(orderUnits));
    BigDecimal over = billed.get().subtract(due);
    BigDecimal limit =
        due.multiply(BigDecimal.valueOf(terms.apply(claim.job()).pricePercent())).movePointLeft(2);
    Money worth = claim.share().of(Money.ofPrice(BigDecimal.valueOf(row.quantity()), over));
    boolean roundedAmount = row.unitPrice().isEmpty() && worth.amount().abs().compareTo(CENT) <= 0;
    if (over.abs().compareTo(limit) > 0 && !roundedAmount) {
      String unit = row.unit().isEmpty() ? claim.item().orElseThrow().orderUnit() : row.unit();
      mine.add(
          Findings.of(
              claim,
              Finding.Name.PRICE_DIFFERS,
              "Ordered at "
                  + price(due)
                  + " a "
                  + unit
                  + ", billed at "
                  + price(billed.get())
                  + ". Ask which price holds.",
              Optional.of(worth)));
    }
  }

  /** Returns a price as it was written, or to the hundredth of a cent where it was worked out. */
  private static String price(BigDecimal price) {
    return (price.scale() > 4
            ? price.setScale(4, RoundingMode.HALF_UP).stripTrailingZeros()
            : price)
        .toPlainString();
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value)
        .setScale(3, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
