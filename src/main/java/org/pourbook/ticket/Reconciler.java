package org.pourbook.ticket;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.buy.Supplier;
import org.pourbook.measure.Money;
import org.pourbook.problem.Problem;

/** Matches tickets and bills with what was ordered (TICK-1 to TICK-5). */
public final class Reconciler {

  private final List<Ordered> orders;
  private final JobTerms terms;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final RowChecks rows;

  private Reconciler(List<Ordered> orders, List<Supplier> suppliers, JobTerms terms) {
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
      JobTerms terms,
      List<Problem> read) {
    Reconciler reconciler = new Reconciler(orders, suppliers, terms);
    reconciler.problems.addAll(read);
    return reconciler.run(tickets, pours);
  }

  private Reconciliation run(List<Ticket> tickets, List<PourPlanned> pours) {
    List<Ticket> once = Duplicates.removed(tickets, findings);
    Roles roles = new Roles(once);
    Matcher matcher = new Matcher(orders, roles, problems);
    Map<Ordered, List<Claim>> byLine = new IdentityHashMap<>();
    orders.forEach(order -> byLine.put(order, new ArrayList<>()));
    TicketGoods goods = new TicketGoods();
    List<Claim> unordered = new ArrayList<>();
    List<Ticket> meant = new ArrayList<>();
    for (Ticket row : once) {
      List<Claim> claims =
          row.isFee() ? List.of() : matcher.claims(row).stream().map(Claim::told).toList();
      meant.add(claims.isEmpty() ? row : claims.get(0).ticket());
      rows.check(meant.get(meant.size() - 1), roles);
      for (Claim claim : claims) {
        goods.add(claim);
        claim
            .ordered()
            .map(byLine::get)
            .ifPresentOrElse(line -> line.add(claim), () -> unordered.add(claim));
      }
    }
    unordered.forEach(this::notOrdered);
    once.stream()
        .filter(row -> row.isFee() && roles.isBilled(row))
        .forEach(fee -> rows.fee(fee, goods.of(fee), goods.orderedM3(fee)));
    return result(meant, roles, byLine, unordered, pours);
  }

  private Reconciliation result(
      List<Ticket> once,
      Roles roles,
      Map<Ordered, List<Claim>> byLine,
      List<Claim> unordered,
      List<PourPlanned> pours) {
    LineChecks lines = new LineChecks(terms, findings);
    List<Matched> matched =
        orders.stream()
            .map(order -> lines.line(order, byLine.getOrDefault(order, List.of())))
            .toList();
    List<Ticket> concrete =
        once.stream()
            .filter(row -> !row.isFee() && roles.isDelivered(row))
            .filter(row -> RowChecks.volumeM3(row) > 0)
            .toList();
    Billed billed =
        new Billed(
            Money.sum(matched.stream().map(Matched::billedAmount).toList()),
            Money.sum(
                unordered.stream()
                    .filter(Claim::billed)
                    .map(Claim::money)
                    .flatMap(Optional::stream)
                    .toList()),
            Money.sum(
                once.stream()
                    .filter(row -> row.isFee() && roles.isBilled(row))
                    .map(Ticket::money)
                    .flatMap(Optional::stream)
                    .toList()));
    findings.sort(Finding.DEAREST_FIRST);
    problems.sort(Comparator.comparing(Problem::place));
    return new Reconciliation(
        findings,
        matched,
        concrete.stream().map(Reconciler::load).toList(),
        WasteLearnt.of(pours, concrete),
        billed,
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
