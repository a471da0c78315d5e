package org.pourbook.cut;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** The search for a cheapest packing: a bound from below, packings from above, until they meet. */
final class CutSearch {
  private final CutModel model;
  private final Effort effort;
  private Optional<Packing> best = Optional.empty();
  private OptionalLong bound = OptionalLong.of(0);

  private CutSearch(CutModel model, Effort effort) {
    this.model = model;
    this.effort = effort;
  }

  static Planning.Found find(CutModel model, Effort effort) {
    CutSearch search = new CutSearch(model, effort);
    search.run();
    return new Planning.Found(
        search.best.map(packing -> Remnants.gathered(model, packing)), search.bound);
  }

  private void run() {
    bound = CoverBound.byLength(model);
    if (bound.isEmpty()) {
      return;
    }
    best = FirstFit.pack(model);
    if (isProven()) {
      return;
    }
    Optional<Knapsack> knapsack = Knapsack.of(model, effort.sums());
    if (knapsack.isEmpty()) {
      return;
    }
    try {
      improve(knapsack.get());
    } catch (ArithmeticException e) {
      // The linear program went astray; what was found and proven until then stands.
    }
  }

  private void improve(Knapsack knapsack) {
    Relaxation.Result root =
        Relaxation.solve(model, new Workshop(knapsack, effort, new Effort.Steps(0)), seeds());
    Workshop workshop = new Workshop(knapsack, effort, new Effort.Steps(effort.steps()));
    raise(root.bound());
    if (bound.isEmpty()) {
      return;
    }
    Optional<Purchases> purchases = lift(root.certificate(), workshop);
    lift(Relaxation.Certificate.byLength(model, knapsack), workshop);
    for (Dive.Rounding rounding : Dive.Rounding.ALL.subList(0, effort.roundings())) {
      if (isProven()) {
        return;
      }
      best = Dive.from(model, workshop, root, rounding, best);
    }
    if (purchases.isEmpty()) {
      purchases = lift(root.certificate(), workshop);
    }
    diveIntoPurchases(workshop, root, purchases);
    if (!isProven() && root.complete() && model.stocks() > 1) {
      Branching branching = new Branching(model, workshop, best);
      long proven = branching.search(root, bound.orElse(0));
      best = branching.best();
      raise(OptionalLong.of(proven));
    }
  }

  private List<Column> seeds() {
    return best.map(p -> p.lots().stream().map(Packing.Lot::column).toList()).orElse(List.of());
  }

  /** Raises the bound to the least attainable total; without a packing there is no window yet. */
  private Optional<Purchases> lift(Relaxation.Certificate certificate, Workshop workshop) {
    if (best.isEmpty() || bound.isEmpty()) {
      return Optional.empty();
    }
    long below = best.get().cost();
    Optional<Purchases> purchases =
        Purchases.below(model, certificate, bound.getAsLong(), below, workshop.steps());
    purchases.ifPresent(p -> raise(OptionalLong.of(p.least())));
    return purchases;
  }

  private void diveIntoPurchases(
      Workshop workshop, Relaxation.Result root, Optional<Purchases> purchases) {
    if (purchases.isEmpty()) {
      return;
    }
    for (int[] boards : purchases.get().cheapest(effort.purchases())) {
      if (isProven() || workshop.steps().areSpent()) {
        return;
      }
      CutModel bought = model.withLimit(boards);
      Relaxation.Result lp = Relaxation.solve(bought, workshop, root.columns());
      if (lp.complete()) {
        cut(bought, workshop, lp);
      }
    }
  }

  /** Tries one way to cut from these boards, or all where that would be the proof. */
  private void cut(CutModel bought, Workshop workshop, Relaxation.Result lp) {
    boolean decides = bought.costOfLimits() <= bound.orElse(0);
    for (Dive.Rounding rounding : Dive.Rounding.ALL.subList(0, decides ? effort.roundings() : 1)) {
      if (!isProven()) {
        best = Dive.from(bought, workshop, lp, rounding, best);
      }
    }
  }

  private void raise(OptionalLong to) {
    if (to.isEmpty()) {
      bound = to;
    } else if (bound.isPresent() && to.getAsLong() > bound.getAsLong()) {
      bound = to;
    }
  }

  private boolean isProven() {
    return best.isPresent() && bound.isPresent() && best.get().cost() <= bound.getAsLong();
  }
}
