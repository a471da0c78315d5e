package org.pourbook.ticket;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.measure.Money;
import org.pourbook.measure.NumberText;

/** What is wrong with a line as a whole: quantities and prices (TICK-2). */
final class LineChecks {

  private final JobTerms terms;
  private final List<Finding> findings;

  LineChecks(JobTerms terms, List<Finding> findings) {
    this.terms = terms;
    this.findings = findings;
  }

  /** Returns the line matched, its findings added. */
  Matched line(Ordered ordered, List<Claim> claims) {
    double delivered = claims.stream().filter(Claim::delivered).mapToDouble(Claim::own).sum();
    double billed = claims.stream().filter(Claim::billed).mapToDouble(Claim::own).sum();
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
        price(ordered, claim, mine);
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
    double tolerance = asked * terms.of(ordered.job()).quantityPercent() / 100 + 1e-9;
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
              told + ", billed " + number(billed) + ": more than came. Ask for a credit.",
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

  private void price(Ordered ordered, Claim claim, List<Finding> mine) {
    Optional<BigDecimal> asked = claim.item().flatMap(Ordered.Item::unitPrice);
    Optional<BigDecimal> billed = perOrderUnit(ordered, claim);
    if (asked.isEmpty() || billed.isEmpty()) {
      return;
    }
    BigDecimal over = billed.get().subtract(asked.get());
    BigDecimal limit =
        asked
            .get()
            .multiply(BigDecimal.valueOf(terms.of(ordered.job()).pricePercent()))
            .movePointLeft(2);
    if (over.abs().compareTo(limit) > 0) {
      Ordered.Item item = claim.item().orElseThrow();
      mine.add(
          Findings.of(
              claim.ticket(),
              ordered.key(),
              Finding.Name.PRICE_DIFFERS,
              "Ordered at "
                  + asked.get().toPlainString()
                  + " a "
                  + item.orderUnit()
                  + ", billed at "
                  + NumberText.text(billed.get())
                  + ". Ask which price holds.",
              Optional.of(
                  Money.ofPrice(BigDecimal.valueOf(claim.own() / item.packHolds()), over))));
    }
  }

  /** Returns the billed price for one order unit, whatever unit the bill counts in. */
  private static Optional<BigDecimal> perOrderUnit(Ordered ordered, Claim claim) {
    Ticket row = claim.ticket();
    Optional<BigDecimal> orderUnits =
        claim
            .item()
            .flatMap(item -> OwnQuantity.of(row, ordered, item).map(own -> own / item.packHolds()))
            .map(units -> BigDecimal.valueOf(units).setScale(9, RoundingMode.HALF_UP))
            .filter(units -> units.signum() != 0);
    return row.unitPrice()
        .flatMap(
            price ->
                orderUnits.map(
                    units ->
                        price
                            .multiply(BigDecimal.valueOf(row.quantity()))
                            .divide(units, 6, RoundingMode.HALF_UP)));
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value)
        .setScale(3, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
