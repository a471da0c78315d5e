package org.pourbook.ticket;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/**
 * Rows told twice (TICK-3): one finding a row too many, counted once. A credit is none, and takes
 * back one row of its quantity: what is billed anew after it is no double.
 */
final class Duplicates {

  private record Key(
      String supplier,
      String ticket,
      String material,
      String size,
      String item,
      String charge,
      boolean bill,
      boolean credit) {

    static Key of(Ticket row) {
      return of(row, row.quantity() < 0 || row.isPriceCredit());
    }

    /** Returns the key of the rows that a credit of goods takes back. */
    static Key creditedBy(Ticket row) {
      return of(row, false);
    }

    private static Key of(Ticket row, boolean credit) {
      return new Key(
          MaterialKey.normal(row.supplier()),
          MaterialKey.normal(row.ticket()),
          MaterialKey.normal(row.key().material()),
          MaterialKey.normal(row.key().size()),
          MaterialKey.normal(row.item()),
          MaterialKey.normal(row.charge()),
          row.isBill(),
          credit);
    }
  }

  private Duplicates() {}

  /**
   * Returns the rows without their doubles, and adds a finding for each double.
   *
   * <p>Rows are put into one order first, so that it does not matter in which order they came.
   */
  static List<Ticket> removed(List<Ticket> rows, Roles roles, List<Finding> findings) {
    List<Ticket> ordered = new ArrayList<>(rows);
    ordered.sort(
        Comparator.comparing(Ticket::supplier)
            .thenComparing(Ticket::ticket)
            .thenComparing(Ticket::invoice)
            .thenComparing(Ticket::key)
            .thenComparing(Ticket::item)
            .thenComparing(Ticket::charge)
            .thenComparing(row -> row.date().map(Object::toString).orElse(""))
            .thenComparing(Ticket::quantity)
            .thenComparing(Ticket::place));
    Map<Key, List<Double>> credited = credited(ordered);
    Map<Key, Ticket> seen = new HashMap<>();
    List<Ticket> once = new ArrayList<>();
    for (Ticket row : ordered) {
      if (credited.getOrDefault(Key.of(row), new ArrayList<>()).remove(row.quantity())) {
        once.add(row);
        continue;
      }
      Ticket first = seen.putIfAbsent(Key.of(row), row);
      if (first == null || row.ticket().isEmpty()) {
        once.add(row);
      } else {
        findings.add(
            Findings.of(
                row,
                row.key(),
                Finding.Name.DOUBLED_TICKET,
                "Also at "
                    + first.place()
                    + (row.quantity() == first.quantity() ? "" : " with another quantity")
                    + "; counted once. Ask for one to be taken off.",
                roles.isBilled(row) ? row.money() : Optional.<Money>empty()));
      }
    }
    return once;
  }

  /** Returns the quantities that credits take back. */
  private static Map<Key, List<Double>> credited(List<Ticket> rows) {
    Map<Key, List<Double>> credited = new HashMap<>();
    rows.stream()
        .filter(row -> row.quantity() < 0)
        .forEach(
            row ->
                credited
                    .computeIfAbsent(Key.creditedBy(row), key -> new ArrayList<>())
                    .add(-row.quantity()));
    return credited;
  }
}
