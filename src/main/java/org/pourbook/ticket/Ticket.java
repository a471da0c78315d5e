package org.pourbook.ticket;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.Money;
import org.pourbook.problem.Place;
import org.pourbook.takeoff.MaterialKey;

/**
 * A row of a delivery ticket or an invoice. The fields follow what ASTM C94 asks of a batch ticket
 * (from memory) and what bills carry.
 *
 * @param ticket serial number, of a bill row the ticket it bills
 * @param job a job's code, or the shared name its order was delivered to
 * @param key material and size as written, either may be empty where the item says it
 * @param quantity in {@code unit}; of a fee row mostly 1
 * @param unit as written; empty means the order unit of the line it matches
 * @param waterAddedL water added at the site [L]
 * @param charge {@code short load}, {@code delivery}, {@code waiting} … when the row is a fee;
 *     empty for goods
 * @param invoice number; empty on a delivery ticket
 */
public record Ticket(
    String ticket,
    Optional<LocalDate> date,
    String supplier,
    String job,
    MaterialKey key,
    String item,
    double quantity,
    String unit,
    String truck,
    Optional<LocalTime> batched,
    Optional<LocalTime> arrived,
    Optional<LocalTime> discharged,
    OptionalDouble waterAddedL,
    Optional<BigDecimal> unitPrice,
    Optional<Money> amount,
    String charge,
    String invoice,
    Place place) {

  private static final int DAY_MINUTES = 24 * 60;

  public boolean isFee() {
    return !charge.isEmpty();
  }

  public boolean isBill() {
    return !invoice.isEmpty();
  }

  public boolean isPriced() {
    return amount.isPresent() || unitPrice.isPresent();
  }

  /** Returns the money of the row: its amount, else quantity × unit price, else nothing. */
  public Optional<Money> money() {
    return amount.or(
        () -> unitPrice.map(price -> Money.ofPrice(BigDecimal.valueOf(quantity), price)));
  }

  /** Returns whether money is taken off for goods that were kept: a credit on the price. */
  public boolean isPriceCredit() {
    return quantity > 0 && money().filter(money -> money.amount().signum() < 0).isPresent();
  }

  /** Returns the unit price, else the one that follows from quantity and amount. */
  public Optional<BigDecimal> priceBilled() {
    return unitPrice.or(
        () ->
            amount
                .filter(money -> quantity != 0)
                .map(
                    money ->
                        money
                            .amount()
                            .divide(BigDecimal.valueOf(quantity), MathContext.DECIMAL64)));
  }

  /** Returns the minutes from batching to the end of discharge, over midnight too. */
  public Optional<Integer> age() {
    return minutes(batched, discharged);
  }

  /** Returns the minutes on site. */
  public Optional<Integer> onSite() {
    return minutes(arrived, discharged);
  }

  private static Optional<Integer> minutes(Optional<LocalTime> from, Optional<LocalTime> to) {
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    int minutes = (to.get().toSecondOfDay() - from.get().toSecondOfDay()) / 60;
    return Optional.of(minutes < 0 ? minutes + DAY_MINUTES : minutes);
  }
}
