package org.pourbook.ticket;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.pourbook.buy.Supplier;
import org.pourbook.measure.Money;
import org.pourbook.problem.Problem;

/** Matches tickets and bills with what was ordered (TICK-1 to TICK-5). */
public final class Reconciler {

  private final List<Ordered> orders;
  private final List<Supplier> suppliers;
  private final Function<String, Terms> terms;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final RowChecks rows;

  private Reconciler(
      List<Ordered> orders, List<Supplier> suppliers, Function<String, Terms> terms) {
    this.orders = orders;
    this.suppliers = suppliers;
    this.terms = terms;
    this.rows = new RowChecks(terms, findings);
  }

  /**
   * Returns everything that is to be taken up, in an order that does not depend on the rows' own.
   *
   * @param terms of a job by its code; of any other word those that hold for no job in particular
   * @param read problems of reading the tickets, told with the others
   */
  public static Reconciliation reconcile(
      List<Ordered> orders,
      List<Supplier> suppliers,
      List<PourPlanned> pours,
      List<Ticket> tickets,
      Function<String, Terms> terms,
      List<Problem> read) {
    Reconciler reconciler = new Reconciler(orders, suppliers, terms);
    reconciler.problems.addAll(read);
    return reconciler.run(tickets, pours);
  }

  private Reconciliation run(List<Ticket> tickets, List<PourPlanned> pours) {
    List<Ticket> once = Duplicates.removed(tickets, new Roles(tickets), findings);
    Roles roles = new Roles(once);
    List<String> names = suppliers.stream().map(Supplier::name).toList();
    Matcher matcher = new Matcher(orders, names, roles, problems);
    Map<Ordered, List<Claim>> byLine = new IdentityHashMap<>();
    orders.forEach(order -> byLine.put(order, new ArrayList<>()));
    TicketGoods goods = new TicketGoods();
    List<Claim> unordered = new ArrayList<>();
    List<List<Claim>> loads = new ArrayList<>();
    for (Ticket row : once) {
      List<Claim> claims = row.isFee() ? List.of() : matcher.claims(row);
      for (Claim claim : claims) {
        goods.add(claim);
        claim
            .ordered()
            .map(byLine::get)
            .ifPresentOrElse(line -> line.add(claim), () -> unordered.add(claim));
      }
      if (row.isFee() || !claims.isEmpty()) {
        rows.check(row, row.isFee() ? row.job() : claims.get(0).job(), roles);
      }
      if (isLoad(claims)) {
        loads.add(claims);
      }
    }
    unordered.forEach(this::notOrdered);
    List<Ticket> fees = once.stream().filter(row -> row.isFee() && roles.isBilled(row)).toList();
    new FeeChecks(terms, suppliers, goods, findings, problems).check(fees);
    return result(byLine, unordered, fees, loads, pours);
  }

  private static boolean isLoad(List<Claim> claims) {
    return claims.stream().filter(Claim::delivered).mapToDouble(Claim::concreteM3).sum() > 0;
  }

  private Reconciliation result(
      Map<Ordered, List<Claim>> byLine,
      List<Claim> unordered,
      List<Ticket> fees,
      List<List<Claim>> loads,
      List<PourPlanned> pours) {
    LineChecks lines = new LineChecks(terms, findings);
    List<Matched> matched =
        orders.stream()
            .map(order -> lines.line(order, byLine.getOrDefault(order, List.of())))
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
            Money.sum(fees.stream().map(Ticket::money).flatMap(Optional::stream).toList()));
    findings.sort(Finding.DEAREST_FIRST);
    problems.sort(Comparator.comparing(Problem::place));
    return new Reconciliation(
        findings,
        matched,
        loads.stream().map(claims -> load(claims.get(0))).toList(),
        WasteLearnt.of(pours, loads.stream().flatMap(List::stream).toList(), terms),
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

  private static ConcreteLoad load(Claim claim) {
    Ticket row = claim.ticket();
    return new ConcreteLoad(
        row.job(),
        row.supplier(),
        row.ticket(),
        row.quantity(),
        row.unit().isEmpty() ? claim.item().map(Ordered.Item::orderUnit).orElse("") : row.unit(),
        row.batched(),
        row.discharged(),
        row.age(),
        row.waterAddedL());
  }
}
