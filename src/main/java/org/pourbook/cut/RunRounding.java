package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Rounds what the linear program takes of each division of runs. */
final class RunRounding {
  static final double WHOLE = 1e-6;

  private RunRounding() {}

  /**
   * Returns the choice of whole numbers of runs; the largest fractions are rounded up.
   *
   * @param times how often the program takes each division of each kind
   * @param way 0, or how many of the largest fractions come last instead
   */
  static RunChoice of(
      List<RunKind> kinds, List<List<List<Long>>> divisions, double[][] times, int way) {
    List<Map<List<Long>, Integer>> whole = new ArrayList<>();
    for (int r = 0; r < kinds.size(); r++) {
      double[] of = times[r];
      Map<List<Long>, Integer> chosen = new TreeMap<>(RunChoice.LONGEST_FIRST);
      int left = kinds.get(r).count();
      for (int d = 0; d < of.length; d++) {
        int floor = Math.min(left, (int) Math.floor(of[d] + WHOLE));
        left -= floor;
        if (floor > 0) {
          chosen.merge(divisions.get(r).get(d), floor, Integer::sum);
        }
      }
      List<Integer> largest = largestFraction(of);
      for (int at = 0; left > 0; at++, left--) {
        int d = largest.get((at + way) % largest.size());
        chosen.merge(divisions.get(r).get(d), 1, Integer::sum);
      }
      whole.add(chosen);
    }
    return new RunChoice(whole);
  }

  private static List<Integer> largestFraction(double[] times) {
    List<Integer> order = new ArrayList<>();
    IntStream.range(0, times.length)
        .boxed()
        .filter(d -> times[d] > WHOLE)
        .sorted(
            Comparator.comparingDouble((Integer d) -> Math.floor(times[d] + WHOLE) - times[d])
                .thenComparing(d -> d))
        .forEach(order::add);
    return order.isEmpty() ? List.of(0) : order;
  }
}
