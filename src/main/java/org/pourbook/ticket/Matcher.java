package org.pourbook.ticket;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.measure.Money;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.MaterialKey;

/** Finds the ordered line of each goods row (TICK-1); what fits two lines is asked about. */
final class Matcher {

  private final List<Ordered> orders;
  private final Roles roles;
  private final List<Problem> problems;

  Matcher(List<Ordered> orders, Roles roles, List<Problem> problems) {
    this.orders = orders;
    this.roles = roles;
    this.problems = problems;
  }

  private record Candidate(Ordered ordered, Ordered.Item item) {}

  /**
   * Returns the row's line; the lines of several jobs where it was delivered to a place they share;
   * nothing where the row was asked about and is left out.
   */
  List<Claim> claims(Ticket ticket) {
    List<Candidate> fitting = fitting(ticket);
    if (fitting.isEmpty()) {
      return List.of(
          new Claim(
              ticket,
              Optional.empty(),
              Optional.empty(),
              ticket.quantity(),
              ticket.money(),
              roles.isDelivered(ticket),
              roles.isBilled(ticket)));
    }
    if (keys(fitting) > 1 || fitting.size() > 1 && !isShared(ticket, fitting)) {
      ask(
          ticket,
          "a row that fits " + fitting.size() + " ordered lines",
          "Material, Size and Item of one of: "
              + String.join(
                  "; ",
                  fitting.stream()
                      .map(
                          fit ->
                              fit.ordered().job()
                                  + " "
                                  + fit.ordered().key()
                                  + " "
                                  + fit.item().item())
                      .distinct()
                      .toList()));
      return List.of();
    }
    Candidate first = fitting.get(0);
    Optional<Double> own = OwnQuantity.of(ticket, first.ordered(), first.item());
    if (own.isEmpty()) {
      ask(
          ticket,
          "unit '" + ticket.unit() + "'",
          first.item().orderUnit() + " or " + first.ordered().unit());
      return List.of();
    }
    return shared(ticket, fitting, own.get());
  }

  private static long keys(List<Candidate> fitting) {
    return fitting.stream().map(fit -> fit.ordered().key().normal()).distinct().count();
  }

  /** Returns whether all lines are of one item that jobs share under the name on the ticket. */
  private static boolean isShared(Ticket ticket, List<Candidate> fitting) {
    return fitting.stream().allMatch(fit -> same(fit.ordered().deliverTo(), ticket.job()))
        && fitting.stream().map(fit -> MaterialKey.normal(fit.item().item())).distinct().count()
            == 1;
  }

  private List<Claim> shared(Ticket ticket, List<Candidate> fitting, double own) {
    double all = fitting.stream().mapToDouble(fit -> fit.item().packs().doubleValue()).sum();
    List<Claim> claims = new ArrayList<>();
    double before = 0;
    for (Candidate fit : fitting) {
      double after =
          all == 0
              ? (claims.size() + 1.0) / fitting.size()
              : before + fit.item().packs().doubleValue() / all;
      double from = before;
      double to = claims.size() == fitting.size() - 1 ? 1 : after;
      claims.add(
          new Claim(
              ticket,
              Optional.of(fit.ordered()),
              Optional.of(fit.item()),
              own * (to - from),
              ticket.money().map(money -> upTo(money, to).minus(upTo(money, from))),
              roles.isDelivered(ticket),
              roles.isBilled(ticket)));
      before = to;
    }
    return claims;
  }

  private static Money upTo(Money money, double share) {
    return Money.rounded(money.amount().multiply(BigDecimal.valueOf(share)));
  }

  private List<Candidate> fitting(Ticket ticket) {
    List<Candidate> fitting = new ArrayList<>();
    for (Ordered ordered : orders) {
      if (isFor(ticket, ordered)) {
        for (Ordered.Item item : ordered.items()) {
          if (fits(ticket, ordered, item)) {
            fitting.add(new Candidate(ordered, item));
          }
        }
      }
    }
    List<Candidate> sameSupplier =
        fitting.stream().filter(fit -> same(fit.item().supplier(), ticket.supplier())).toList();
    return sameSupplier.isEmpty() ? fitting : sameSupplier;
  }

  private static boolean isFor(Ticket ticket, Ordered ordered) {
    return same(ticket.job(), ordered.job()) || same(ticket.job(), ordered.deliverTo());
  }

  /** Returns whether a row can be that item: what it says of item, material and size agrees. */
  private static boolean fits(Ticket ticket, Ordered ordered, Ordered.Item item) {
    MaterialKey key = ticket.key();
    boolean saysItem = !ticket.item().isEmpty();
    if (saysItem && same(ticket.item(), item.item())) {
      return true;
    }
    if (key.material().isEmpty()) {
      return false;
    }
    return same(key.material(), ordered.key().material())
        && (key.size().isEmpty() || same(key.size(), ordered.key().size()))
        && (!saysItem || item.item().isEmpty() || !same(ticket.supplier(), item.supplier()));
  }

  private static boolean same(String a, String b) {
    return MaterialKey.normal(a).equals(MaterialKey.normal(b));
  }

  private void ask(Ticket ticket, String found, String expected) {
    problems.add(
        new Problem(ticket.place(), ticket.job(), found, expected, Problem.Effect.ROW_LEFT_OUT));
  }
}
