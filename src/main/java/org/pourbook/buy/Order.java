package org.pourbook.buy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/**
 * What one supplier is to bring to one place on one day.
 *
 * @param number e.g. {@code PB-001}, the same for the same input
 * @param supplier empty for the order of materials without a price
 * @param deliverTo the shared name, or the job's code for {@code site}
 * @param site the address printed for the driver
 * @param goods sum of the goods lines; fees, tax and total beside
 * @param taxPercent empty where jobs of different rates share the order, or without a supplier
 * @param complete false when a line has no price
 */
public record Order(
    String number,
    Optional<Supplier> supplier,
    String deliverTo,
    String site,
    List<String> jobs,
    Optional<LocalDate> neededBy,
    List<OrderLine> lines,
    Money goods,
    Money fees,
    Optional<BigDecimal> taxPercent,
    Money tax,
    Money total,
    boolean complete,
    List<String> notes) {
  public Order {
    jobs = List.copyOf(jobs);
    lines = List.copyOf(lines);
    notes = List.copyOf(notes);
  }

  /**
   * A line of an order, goods or a fee.
   *
   * @param item the supplier's code; of unpriced boards and bars the stock length
   * @param fee true for {@code delivery}, {@code short load} …; then {@code key.material()} is the
   *     fee's name
   * @param orderBy needed by less the lead days, in working days
   */
  public record OrderLine(
      int line,
      boolean fee,
      List<String> jobs,
      MaterialKey key,
      String item,
      String description,
      Optional<LocalDate> orderBy,
      BigDecimal packs,
      String orderUnit,
      Optional<BigDecimal> unitPrice,
      Optional<Money> amount,
      boolean taxable) {
    public OrderLine {
      jobs = List.copyOf(jobs);
    }
  }
}
