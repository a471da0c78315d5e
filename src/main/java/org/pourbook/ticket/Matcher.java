package org.pourbook.ticket;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.MaterialKey;

/** Finds the ordered line of each goods row (TICK-1); what fits two lines is asked about. */
final class Matcher {

  private final Map<String, Set<Ordered>> byPlace = new HashMap<>();
  private final Set<String> suppliers = new HashSet<>();
  private final Set<String> told = new HashSet<>();
  private final Roles roles;
  private final List<Problem> problems;

  /**
   * Looks rows up.
   *
   * @param suppliers that are known by name besides those that were ordered from
   */
  Matcher(List<Ordered> orders, Collection<String> suppliers, Roles roles, List<Problem> problems) {
    suppliers.forEach(name -> this.suppliers.add(MaterialKey.normal(name)));
    for (Ordered ordered : orders) {
      ordered.items().forEach(item -> this.suppliers.add(MaterialKey.normal(item.supplier())));
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
              Share.WHOLE,
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
    tellSupplier(ticket, first.item());
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
      Share share = new Share(before, claims.size() == fitting.size() - 1 ? 1 : after);
      claims.add(
          new Claim(
              ticket,
              Optional.of(fit.ordered()),
              Optional.of(fit.item()),
              own * share.size(),
              share,
              roles.isDelivered(ticket),
              roles.isBilled(ticket)));
      before = share.to();
    }
    return claims;
  }

  /** A known supplier delivers what was ordered of it; one of an unknown name may be any. */
  private List<Candidate> fitting(Ticket ticket) {
    boolean known = suppliers.contains(MaterialKey.normal(ticket.supplier()));
    List<Candidate> named = new ArrayList<>();
    List<Candidate> described = new ArrayList<>();
    for (Ordered ordered : byPlace.getOrDefault(MaterialKey.normal(ticket.job()), Set.of())) {
      for (Ordered.Item item : ordered.items()) {
        if (known && !same(item.supplier(), ticket.supplier())) {
          continue;
        }
        if (namesItem(ticket, item)) {
          named.add(new Candidate(ordered, item));
        } else if (describes(ticket, ordered)) {
          described.add(new Candidate(ordered, item));
        }
      }
    }
    return named.isEmpty() ? unnamed(ticket, described, known) : withOthers(named, described);
  }

  /** A supplier's own code that is none of those ordered is other goods. */
  private static List<Candidate> unnamed(Ticket ticket, List<Candidate> described, boolean known) {
    return described.stream()
        .filter(fit -> !known || ticket.item().isEmpty() || fit.item().item().isEmpty())
        .toList();
  }

  /** Adds other goods that the row describes, so that a row that contradicts itself is asked. */
  private static List<Candidate> withOthers(List<Candidate> named, List<Candidate> described) {
    Set<String> keys = new HashSet<>();
    named.forEach(fit -> keys.add(fit.ordered().key().normal().toString()));
    List<Candidate> all = new ArrayList<>(named);
    described.stream()
        .filter(fit -> keys.add(fit.ordered().key().normal().toString()))
        .forEach(all::add);
    return all;
  }

  /** Returns whether what a row says of material and size is this line. */
  private static boolean describes(Ticket ticket, Ordered ordered) {
    MaterialKey key = ticket.key();
    return same(key.material(), ordered.key().material())
        && (key.size().isEmpty() || same(key.size(), ordered.key().size()));
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

  /** Notes once that a name is none of the suppliers'. */
  private void tellSupplier(Ticket ticket, Ordered.Item item) {
    String name = MaterialKey.normal(ticket.supplier());
    if (!suppliers.contains(name) && told.add(name)) {
      problems.add(
          new Problem(
              ticket.place(),
              ticket.job(),
              "supplier '" + ticket.supplier() + "', from whom nothing was ordered",
              "matched with what was ordered of " + item.supplier() + "; look whether that is so",
              Problem.Effect.NOTE));
    }
  }

  private void ask(Ticket ticket, String found, String expected) {
    problems.add(
        new Problem(ticket.place(), ticket.job(), found, expected, Problem.Effect.ROW_LEFT_OUT));
  }
}
