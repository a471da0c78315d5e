package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figure;
import org.pourbook.outline.FigureSide;

/** How long strips are that cover a figure of straight sides, laid side by side with laps. */
final class StripCover {

  private StripCover() {}

  /** A stretch along a strip [m]. */
  private record Stretch(double fromM, double toM) {}

  /**
   * Returns the length of all strips, each as long as the figure under it; where an opening or a
   * bay goes through a whole strip, the strip is cut there.
   *
   * @param along true: strips parallel to X
   */
  static Length run(Figure figure, boolean along, Length width, Length lap) {
    return covered(figure, along, width, lap, false);
  }

  /** Returns the length of all side laps: what lies under each strip and the one before it. */
  static Length sideLaps(Figure figure, boolean along, Length width, Length lap) {
    return covered(figure, along, width, lap, true);
  }

  /** Length that the figure takes of each strip, or of its lap over the one before. */
  private static Length covered(
      Figure figure, boolean along, Length width, Length lap, boolean laps) {
    List<FigureSide> sides = figure.sides();
    double first = sides.stream().mapToDouble(s -> across(s, along, true)).min().orElse(0);
    double last = sides.stream().mapToDouble(s -> across(s, along, true)).max().orElse(0);
    double run = 0;
    double step = width.minus(lap).metres();
    double band = (laps ? lap : width).metres();
    double from = laps ? first + step : first;
    while (from == first || from + lap.metres() < last - 1e-9) {
      run += covered(sides, along, from, Math.min(last, from + band));
      from += step;
    }
    return Length.ofMetres(run);
  }

  private static double across(FigureSide side, boolean along, boolean start) {
    if (along) {
      return start ? side.y1M() : side.y2M();
    }
    return start ? side.x1M() : side.x2M();
  }

  /** Length along the strip that the figure takes between two levels. */
  private static double covered(List<FigureSide> sides, boolean along, double from, double to) {
    TreeSet<Double> levels = new TreeSet<>(List.of(from, to));
    for (FigureSide side : sides) {
      double level = across(side, along, true);
      if (level > from && level < to) {
        levels.add(level);
      }
    }
    List<Stretch> stretches = new ArrayList<>();
    Double below = null;
    for (Double level : levels) {
      if (below != null) {
        stretches.addAll(between(sides, along, below, level));
      }
      below = level;
    }
    return union(stretches);
  }

  /** What the figure covers between two levels with no corner between them. */
  private static List<Stretch> between(
      List<FigureSide> sides, boolean along, double low, double high) {
    double middle = (low + high) / 2;
    List<FigureSide> crossing =
        sides.stream()
            .filter(
                side ->
                    Math.min(across(side, along, true), across(side, along, false)) < middle
                        && Math.max(across(side, along, true), across(side, along, false)) > middle)
            .sorted(Comparator.comparingDouble(side -> at(side, along, middle)))
            .toList();
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i + 1 < crossing.size(); i += 2) {
      FigureSide left = crossing.get(i);
      FigureSide right = crossing.get(i + 1);
      stretches.add(
          new Stretch(
              Math.min(at(left, along, low), at(left, along, high)),
              Math.max(at(right, along, low), at(right, along, high))));
    }
    return stretches;
  }

  /** Where a side lies along the strip at a level. */
  private static double at(FigureSide side, boolean along, double level) {
    double start = across(side, along, true);
    double share = (level - start) / (across(side, along, false) - start);
    double from = along ? side.x1M() : side.y1M();
    double to = along ? side.x2M() : side.y2M();
    return from + share * (to - from);
  }

  private static double union(List<Stretch> stretches) {
    double sum = 0;
    double reached = Double.NEGATIVE_INFINITY;
    for (Stretch stretch :
        stretches.stream().sorted(Comparator.comparingDouble(Stretch::fromM)).toList()) {
      if (stretch.toM() > reached) {
        sum += stretch.toM() - Math.max(stretch.fromM(), reached);
        reached = stretch.toM();
      }
    }
    return sum;
  }
}
