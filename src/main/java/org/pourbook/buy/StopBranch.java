package org.pourbook.buy;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.pourbook.buy.StopProblem.Part;
import org.pourbook.buy.StopProblem.Way;

/** Branch and bound over the items of a {@link StopProblem}, with some of its stops. */
final class StopBranch {

  /** The best choice so far, and how far the search has gone. */
  static final class Best {
    private final StopProblem problem;
    private final int nodeLimit;
    private int[] chosen = new int[0];
    private long cost = Long.MAX_VALUE;
    private long openBound = Long.MAX_VALUE;
    private int nodes;

    Best(StopProblem problem, int nodeLimit) {
      this.problem = problem;
      this.nodeLimit = nodeLimit;
    }

    long costMicros() {
      return cost;
    }

    private void offer(int[] other) {
      long otherCost = problem.costMicros(other);
      if (otherCost < cost) {
        cost = otherCost;
        chosen = other.clone();
      }
    }

    /** Counts a node; at the limit it is left open, and its bound is kept. */
    private boolean mayEnter(long bound) {
      nodes++;
      if (nodes > nodeLimit) {
        openBound = Math.min(openBound, bound);
        return false;
      }
      return true;
    }

    StopSearch.Found found() {
      return new StopSearch.Found(
          Arrays.stream(chosen).boxed().toList(), cost, Math.min(cost, openBound));
    }
  }

  private final StopProblem problem;
  private final boolean[] open;
  private final boolean allUsed;
  private final Best best;

  /** Ways within the open stops, by item, cheapest first. */
  private final int[][] ways;

  /** Least cost of the items from one on. */
  private final long[] restCost;

  /** Most goods that the items from one on can bring, by stop. */
  private final long[][] restGoods;

  /** Whether whoever uses the stop has something delivered. */
  private final boolean[] surelyDelivered;

  private final int[] chosen;
  private final long[] goods;
  private final int[] uses;
  private final int[] deliveries;

  /**
   * Prepares a search.
   *
   * @param allUsed every open stop is used: choices that leave one out belong to another set
   */
  StopBranch(StopProblem problem, boolean[] open, boolean allUsed, Best best) {
    this.problem = problem;
    this.open = open.clone();
    this.allUsed = allUsed;
    this.best = best;
    int items = problem.items().size();
    int stops = open.length;
    this.ways = new int[items][];
    this.restCost = new long[items + 1];
    this.restGoods = new long[items + 1][stops];
    this.surelyDelivered = new boolean[stops];
    Arrays.fill(surelyDelivered, true);
    this.chosen = new int[items];
    this.goods = new long[stops];
    this.uses = new int[stops];
    this.deliveries = new int[stops];
    for (int item = items - 1; item >= 0; item--) {
      prepare(item);
    }
  }

  private void prepare(int item) {
    List<Way> all = problem.items().get(item).ways();
    ways[item] =
        IntStream.range(0, all.size())
            .filter(way -> all.get(way).parts().stream().allMatch(part -> open[part.stop()]))
            .boxed()
            .sorted(Comparator.comparingLong(way -> all.get(way).costMicros()))
            .mapToInt(way -> way)
            .toArray();
    restGoods[item] = restGoods[item + 1].clone();
    long[] most = new long[open.length];
    for (int way : ways[item]) {
      for (Part part : all.get(way).parts()) {
        most[part.stop()] = Math.max(most[part.stop()], part.goodsCents());
        surelyDelivered[part.stop()] &= part.delivered();
      }
    }
    for (int stop = 0; stop < most.length; stop++) {
      restGoods[item][stop] += most[stop];
    }
    long least = ways[item].length == 0 ? 0 : all.get(ways[item][0]).costMicros();
    restCost[item] = restCost[item + 1] + least;
  }

  /** Returns whether every item can be met, and every open stop used where that is asked. */
  boolean isPossible() {
    boolean met = Arrays.stream(ways).allMatch(way -> way.length > 0);
    return met
        && (!allUsed
            || IntStream.range(0, open.length).allMatch(stop -> !open[stop] || isOffered(stop)));
  }

  private boolean isOffered(int stop) {
    for (int item = 0; item < ways.length; item++) {
      List<Way> all = problem.items().get(item).ways();
      for (int way : ways[item]) {
        if (all.get(way).parts().stream().anyMatch(part -> part.stop() == stop)) {
          return true;
        }
      }
    }
    return false;
  }

  long rootBound() {
    return bound(0, 0);
  }

  /** Offers the cheapest way of every item. */
  void offerCheapestWays() {
    best.offer(Arrays.stream(ways).mapToInt(way -> way[0]).toArray());
  }

  /** Looks for a better choice than the best so far. */
  void search() {
    offerCheapestWays();
    enter(0, 0);
  }

  private void enter(int item, long cost) {
    long bound = bound(item, cost);
    if (bound >= best.costMicros() || !best.mayEnter(bound)) {
      return;
    }
    if (item == ways.length) {
      best.offer(chosen);
      return;
    }
    List<Way> all = problem.items().get(item).ways();
    for (int index : ways[item]) {
      Way way = all.get(index);
      chosen[item] = index;
      count(way, 1);
      enter(item + 1, cost + way.costMicros());
      count(way, -1);
    }
  }

  private void count(Way way, int sign) {
    for (Part part : way.parts()) {
      goods[part.stop()] += sign * part.goodsCents();
      uses[part.stop()] += sign;
      deliveries[part.stop()] += part.delivered() ? sign : 0;
    }
  }

  /** Returns the least that the items chosen so far and the best of the rest can cost. */
  private long bound(int item, long cost) {
    long bound = cost + restCost[item];
    for (int stop = 0; stop < open.length; stop++) {
      boolean sure = allUsed && open[stop];
      if (sure || uses[stop] > 0) {
        long most = goods[stop] + restGoods[item][stop];
        boolean delivered = deliveries[stop] > 0 || (sure && surelyDelivered[stop]);
        bound += problem.stops().get(stop).costMicros(most, delivered);
      }
    }
    return bound;
  }
}
