package org.pourbook.buy;

import java.util.List;

/**
 * Which way to take for each item, so that ways and stops together cost least. A stop is a supplier
 * at a delivery; money is in millionths of the currency unit, goods in cents.
 */
record StopProblem(List<Terms> stops, List<Item> items) {
  StopProblem {
    stops = List.copyOf(stops);
    items = List.copyOf(items);
  }

  private static final long MICROS_IN_A_CENT = 10_000;

  /**
   * What a stop costs beyond its goods.
   *
   * @param freeFromCents goods from which no delivery fee is due; {@link Long#MAX_VALUE} for never
   * @param ownMicros cost of the stop itself, to the builder
   */
  record Terms(long feeCents, long freeFromCents, long minimumCents, long ownMicros) {

    /** Returns the cost of a stop that brings so much; a fee is due only if it is delivered. */
    long costMicros(long goodsCents, boolean delivered) {
      long fee = delivered && goodsCents < freeFromCents ? feeCents : 0;
      return (fee + Math.max(0, minimumCents - goodsCents)) * MICROS_IN_A_CENT + ownMicros;
    }
  }

  /** What must be chosen: one of its ways. */
  record Item(List<Way> ways) {
    Item {
      ways = List.copyOf(ways);
    }
  }

  /** One way: its own cost, and what it brings by which stops. */
  record Way(long costMicros, List<Part> parts) {
    Way {
      parts = List.copyOf(parts);
    }
  }

  /** What a way brings by a stop. */
  record Part(int stop, long goodsCents, boolean delivered) {}

  /** Returns the cost of choosing the given way of each item. */
  long costMicros(int[] chosen) {
    long[] goods = new long[stops.size()];
    boolean[] used = new boolean[stops.size()];
    boolean[] delivered = new boolean[stops.size()];
    long cost = 0;
    for (int i = 0; i < chosen.length; i++) {
      Way way = items.get(i).ways().get(chosen[i]);
      cost += way.costMicros();
      for (Part part : way.parts()) {
        goods[part.stop()] += part.goodsCents();
        used[part.stop()] = true;
        delivered[part.stop()] |= part.delivered();
      }
    }
    for (int stop = 0; stop < goods.length; stop++) {
      cost += used[stop] ? stops.get(stop).costMicros(goods[stop], delivered[stop]) : 0;
    }
    return cost;
  }
}
