package org.pourbook.ticket;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.measure.Money;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.MaterialKey;

/** Finds the ordered line of each goods row (TICK-1); what fits two lines is asked about. */
final class Matcher {

  private final Map<String, Set<Ordered>> byPlace = new HashMap<>();
  private final Roles roles;
  private final List<Problem> problems;

  Matcher(List<Ordered> orders, Roles roles, List<Problem> problems) {
    for (Ordered ordered : orders) {
      for (String place : List.of(ordered.job(), ordered.deliverTo())) {
        byPlace.computeIfAbsent(MaterialKey.normal(place), p -> new LinkedHashSet<>()).add(ordered);
      }
    }
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
    for (Ordered ordered : byPlace.getOrDefault(MaterialKey.normal(ticket.job()), Set.of())) {
      for (Ordered.Item item : ordered.items()) {
        if (fits(ticket, ordered, item)) {
          fitting.add(new Candidate(ordered, item));
        }
      }
    }
    List<Candidate> sameSupplier =
        fitting.stream().filter(fit -> same(fit.item().supplier(), ticket.supplier())).toList();
    return sameSupplier.isEmpty() ? fitting : sameSupplier;
  }

  /** Returns whether a row can be that item: what it says of item, material and size agrees. */
  private static boolean fits(Ticket ticket, Ordered ordered, Ordered.Item item) {
    MaterialKey key = ticket.key();
    boolean saysItem = !ticket.item().isEmpty();
    if (namesItem(ticket, item)) {
      return true;
    }
    if (key.material().isEmpty()) {
      return false;
    }
    return same(key.material(), ordered.key().material())
        && (key.size().isEmpty() || same(key.size(), ordered.key().size()))
        && (!saysItem || item.item().isEmpty() || !same(ticket.supplier(), item.supplier()));
  }

  /** Returns whether the supplier's code stands on the row; plants print it as mix or product. */
  private static boolean namesItem(Ticket ticket, Ordered.Item item) {
    return !item.item().isEmpty()
        && (same(ticket.item(), item.item())
            || same(ticket.key().size(), item.item())
            || same(ticket.key().material(), item.item()));
  }

  private static boolean same(String a, String b) {
    return MaterialKey.normal(a).equals(MaterialKey.normal(b));
  }

  private void ask(Ticket ticket, String found, String expected) {
    problems.add(
        new Problem(ticket.place(), ticket.job(), found, expected, Problem.Effect.ROW_LEFT_OUT));
  }
}
