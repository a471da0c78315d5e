package org.pourbook.ticket;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.buy.Supplier;
import org.pourbook.measure.Money;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;

/** Matches tickets and bills with what was ordered (TICK-1 to TICK-5). */
public final class Reconciler {

  private final List<Ordered> orders;
  private final Terms terms;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final RowChecks rows;

  private Reconciler(List<Ordered> orders, List<Supplier> suppliers, Terms terms) {
    this.orders = orders;
    this.terms = terms;
    this.rows = new RowChecks(terms, suppliers, findings);
  }

  /**
   * Returns everything that is to be taken up, in an order that does not depend on the rows' own.
   *
   * @param read problems of reading the tickets, told with the others
   */
  public static Reconciliation reconcile(
      List<Ordered> orders,
      List<Supplier> suppliers,
      List<PourPlanned> pours,
      List<Ticket> tickets,
      Terms terms,
      List<Problem> read) {
    Reconciler reconciler = new Reconciler(orders, suppliers, terms);
    reconciler.problems.addAll(read);
    return reconciler.run(tickets, pours);
  }

  private Reconciliation run(List<Ticket> tickets, List<PourPlanned> pours) {
    List<Ticket> once = Duplicates.removed(tickets, findings);
    Roles roles = new Roles(once);
    Matcher matcher = new Matcher(orders, roles, problems);
    Map<Ordered, List<Claim>> byLine = new LinkedHashMap<>();
    orders.forEach(order -> byLine.put(order, new ArrayList<>()));
    for (Ticket row : once) {
      rows.check(row);
      if (!row.isFee()) {
        for (Claim claim : matcher.claims(row)) {
          claim
              .ordered()
              .ifPresentOrElse(
                  order -> byLine.computeIfAbsent(order, o -> new ArrayList<>()).add(claim),
                  () -> notOrdered(claim));
        }
      }
    }
    fees(once);
    LineChecks lines = new LineChecks(terms, findings);
    List<Matched> matched = new ArrayList<>();
    byLine.forEach((order, claims) -> matched.add(lines.line(order, claims)));
    List<Ticket> concrete =
        once.stream()
            .filter(row -> !row.isFee() && roles.isDelivered(row))
            .filter(row -> RowChecks.volumeM3(row) > 0)
            .toList();
    findings.sort(Finding.DEAREST_FIRST);
    problems.sort(Comparator.comparing(Problem::place));
    return new Reconciliation(
        findings,
        matched,
        concrete.stream().map(Reconciler::load).toList(),
        WasteLearnt.of(pours, concrete),
        problems);
  }

  private void notOrdered(Claim claim) {
    Ticket row = claim.ticket();
    Optional<Money> money = claim.billed() ? claim.money() : Optional.empty();
    findings.add(
        Findings.of(
            row,
            row.key(),
            Finding.Name.NOT_ORDERED,
            "No order of " + row.job() + " holds it. Ask who ordered it and who signed for it.",
            money));
  }

  private void fees(List<Ticket> once) {
    for (Ticket fee : once) {
      if (fee.isFee()) {
        List<Ticket> goods =
            once.stream()
                .filter(row -> !row.isFee())
                .filter(row -> same(row.supplier(), fee.supplier()))
                .filter(row -> same(row.ticket(), fee.ticket()))
                .filter(row -> row.isBill() == fee.isBill())
                .toList();
        rows.fee(fee, goods, orderedConcreteM3(fee));
      }
    }
  }

  private double orderedConcreteM3(Ticket fee) {
    return orders.stream()
        .filter(order -> same(order.job(), fee.job()))
        .filter(
            order -> Material.named(order.key().material()).equals(Optional.of(Material.CONCRETE)))
        .mapToDouble(
            order ->
                org.pourbook.measure.Unit.named(order.unit())
                    .map(unit -> unit.toBase(order.ordered()))
                    .orElse(0.0))
        .sum();
  }

  private static boolean same(String a, String b) {
    return MaterialKey.normal(a).equals(MaterialKey.normal(b));
  }

  private static ConcreteLoad load(Ticket row) {
    return new ConcreteLoad(
        row.job(),
        row.supplier(),
        row.ticket(),
        row.quantity(),
        row.unit().isEmpty() ? "yd3" : row.unit(),
        row.batched(),
        row.discharged(),
        row.age(),
        row.waterAddedL());
  }
}
