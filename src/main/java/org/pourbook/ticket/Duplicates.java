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
 * Rows told twice (TICK-3): one finding a row too many, counted once. A credit, a row below zero,
 * is none of them, and takes back one row of its amount: what is billed anew after it is no double.
 */
final class Duplicates {

  private record Key(
      String supplier,
      String ticket,
      String material,
      String size,
      String item,
      String charge,
      boolean bill) {

    static Key of(Ticket row) {
      return new Key(
          MaterialKey.normal(row.supplier()),
          MaterialKey.normal(row.ticket()),
          MaterialKey.normal(row.key().material()),
          MaterialKey.normal(row.key().size()),
          MaterialKey.normal(row.item()),
          MaterialKey.normal(row.charge()),
          row.isBill());
    }
  }

  private Duplicates() {}

  /**
   * Returns the rows without their doubles, and adds a finding for each double.
   *
   * <p>Rows are put into one order first, so that it does not matter in which order they came.
   */
  static List<Ticket> removed(List<Ticket> rows, List<Finding> findings) {
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
    Map<Key, List<Double>> credits = new HashMap<>();
    ordered.stream()
        .filter(Duplicates::isCredit)
        .forEach(
            row ->
                credits
                    .computeIfAbsent(Key.of(row), key -> new ArrayList<>())
                    .add(-row.quantity()));
    Map<Key, Ticket> seen = new HashMap<>();
    List<Ticket> once = new ArrayList<>();
    for (Ticket row : ordered) {
      if (isCredit(row)
          || row.ticket().isEmpty()
          || credits.getOrDefault(Key.of(row), new ArrayList<>()).remove(row.quantity())) {
        once.add(row);
        continue;
      }
      Ticket first = seen.putIfAbsent(Key.of(row), row);
      if (first == null) {
        once.add(row);
      } else {
        findings.add(
            Findings.of(
                row,
                row.key(),
                Finding.Name.DOUBLED_TICKET,
                "Also at " + first.place() + "; counted once. Ask for one to be taken off.",
                row.isPriced() ? row.money() : Optional.<Money>empty()));
      }
    }
    return once;
  }

  private static boolean isCredit(Ticket row) {
    return row.quantity() < 0;
  }
}
