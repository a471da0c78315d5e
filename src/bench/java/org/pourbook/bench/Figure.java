package org.pourbook.bench;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** How long something took, in nanoseconds: by the clock, and of all processors. */
record Figure(double wall, double cpu) {

  Figure minus(double cpuNanos) {
    return new Figure(wall, cpu - cpuNanos);
  }

  /** Returns the medians of figures. */
  static Figure median(List<Figure> figures) {
    return new Figure(median(figures, Figure::wall), median(figures, Figure::cpu));
  }

  /** Returns the medians of the ratios of figures that were taken in turn. */
  static Figure ratio(List<Figure> ours, List<Figure> theirs) {
    return median(
        IntStream.range(0, ours.size())
            .mapToObj(
                i ->
                    new Figure(
                        ours.get(i).wall / theirs.get(i).wall,
                        ours.get(i).cpu / theirs.get(i).cpu))
            .toList());
  }

  private static double median(List<Figure> figures, ToDoubleFunction<Figure> of) {
    double[] sorted = figures.stream().mapToDouble(of).sorted().toArray();
    int n = sorted.length;
    return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
  }
}
