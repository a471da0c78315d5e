package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Branch and bound over the number of boards of each stock length. With several priced lengths most
 * of the gap comes from relaxations that buy parts of boards; whole numbers of them close it.
 */
final class Branching {
  private static final double WHOLE = 1e-6;

  /** From {@code lower} to {@code upper} boards; the least bound first, then the older one. */
  private record Node(int[] lower, int[] upper, long bound, List<Column> columns, int number) {
    static final Comparator<Node> ORDER =
        Comparator.comparingLong(Node::bound)
            .thenComparing(Node::number, Comparator.reverseOrder());
  }

  private final CutModel model;
  private final Workshop workshop;
  private final PriorityQueue<Node> open = new PriorityQueue<>(Node.ORDER);
  private Optional<Packing> best;

  /** Least cost of a purchase that could not be decided. */
  private long undecided = Long.MAX_VALUE;

  private int nodes;

  Branching(CutModel model, Workshop workshop, Optional<Packing> best) {
    this.model = model;
    this.workshop = workshop;
    this.best = best;
  }

  Optional<Packing> best() {
    return best;
  }

  /** Searches from the root; returns a bound of the cost of every plan. */
  long search(Relaxation.Result root, long bound) {
    open.add(new Node(new int[model.stocks()], model.limit(), bound, root.columns(), nodes));
    while (!open.isEmpty() && open.peek().bound() < cost()) {
      if (nodes >= workshop.effort().branches() || workshop.steps().areSpent()) {
        return Math.min(open.peek().bound(), Math.min(undecided, cost()));
      }
      visit(open.remove());
    }
    return Math.min(undecided, cost());
  }

  private long cost() {
    return best.isPresent() ? best.get().cost() : Long.MAX_VALUE;
  }

  private void visit(Node node) {
    nodes++;
    CutModel bought = model.between(node.lower(), node.upper());
    Relaxation.Result lp = Relaxation.solve(bought, workshop, seeds(node));
    if (lp.bound().isEmpty()) {
      return;
    }
    long paid = paid(node.lower());
    long bound = Math.max(node.bound(), lift(bought, lp, paid));
    if (bound >= cost() || !lp.complete()) {
      undecided = lp.complete() ? undecided : Math.min(undecided, bound);
      return;
    }
    Relaxation.Result own = inOwnStock(lp);
    double[] boards = boards(own);
    int split = mostFractional(boards);
    if (split >= 0) {
      if (nodes <= 4 || nodes % 5 == 0) {
        dive(node, own, Dive.Rounding.ALL.get(nodes % 6));
      }
      branch(node, own, bound, split, (int) Math.floor(boards[split]));
    } else {
      whole(node, own, bound, boards);
    }
  }

  private void dive(Node node, Relaxation.Result lp, Dive.Rounding rounding) {
    best = Dive.from(model.withLimit(node.upper()), workshop, lp, rounding, best);
  }

  /** The relaxation buys whole boards: tries to cut just those, then looks beside them. */
  private void whole(Node node, Relaxation.Result lp, long bound, double[] boards) {
    int[] exactly = Arrays.stream(boards).mapToInt(b -> (int) Math.round(b)).toArray();
    Node leaf = new Node(exactly, exactly, bound, lp.columns(), nodes);
    for (Dive.Rounding rounding : Dive.Rounding.ALL.subList(0, workshop.effort().roundings())) {
      if (cost() > paid(exactly)) {
        dive(leaf, lp, rounding);
      }
    }
    if (cost() <= bound) {
      return;
    }
    int[] lower = node.lower().clone();
    int[] upper = node.upper().clone();
    for (int k = 0; k < exactly.length; k++) {
      if (exactly[k] > lower[k]) {
        add(lower, with(upper, k, exactly[k] - 1), bound, lp);
      }
      if (exactly[k] < upper[k]) {
        add(with(lower, k, exactly[k] + 1), upper, bound, lp);
      }
      lower = with(lower, k, exactly[k]);
      upper = with(upper, k, exactly[k]);
    }
    if (cost() > paid(exactly)) {
      undecided = Math.min(undecided, Math.max(bound, paid(exactly)));
    }
  }

  private void branch(Node node, Relaxation.Result lp, long bound, int split, int floor) {
    add(node.lower(), with(node.upper(), split, floor), bound, lp);
    add(with(node.lower(), split, floor + 1), node.upper(), bound, lp);
  }

  private void add(int[] lower, int[] upper, long bound, Relaxation.Result lp) {
    open.add(new Node(lower, upper, bound, lp.columns(), nodes));
  }

  private static int[] with(int[] boards, int stock, int value) {
    int[] changed = boards.clone();
    changed[stock] = value;
    return changed;
  }

  private long lift(CutModel bought, Relaxation.Result lp, long paid) {
    long plain = lp.bound().orElse(0);
    return best.isEmpty()
        ? paid + plain
        : paid + Purchases.raised(bought, lp.certificate(), plain, cost() - paid, workshop.steps());
  }

  private long paid(int[] lower) {
    return IntStream.range(0, lower.length).mapToLong(k -> lower[k] * model.cost()[k]).sum();
  }

  private List<Column> seeds(Node node) {
    List<Column> seeds = new ArrayList<>(node.columns());
    node.columns().forEach(c -> seeds.add(c.ofStock(model.stocks() + c.stock())));
    return seeds;
  }

  /** Cuts from boards already bought and from others are the same cuts. */
  private Relaxation.Result inOwnStock(Relaxation.Result lp) {
    TreeMap<Column, Double> times = new TreeMap<>(Column.ORDER);
    for (int j = 0; j < lp.times().length; j++) {
      Column column = lp.columns().get(j);
      times.merge(column.ofStock(column.stock() % model.stocks()), lp.times()[j], Double::sum);
    }
    return new Relaxation.Result(
        List.copyOf(times.keySet()),
        times.values().stream().mapToDouble(t -> t).toArray(),
        lp.bound(),
        lp.certificate(),
        lp.complete());
  }

  private double[] boards(Relaxation.Result lp) {
    double[] boards = new double[model.stocks()];
    for (int j = 0; j < lp.times().length; j++) {
      boards[lp.columns().get(j).stock()] += lp.times()[j];
    }
    return boards;
  }

  private int mostFractional(double[] boards) {
    int split = -1;
    double most = WHOLE;
    for (int k = 0; k < boards.length; k++) {
      double off = Math.abs(boards[k] - Math.rint(boards[k]));
      if (off > most) {
        most = off;
        split = k;
      }
    }
    return split;
  }
}
