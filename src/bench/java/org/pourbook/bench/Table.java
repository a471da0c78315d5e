package org.pourbook.bench;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;

/** The one table: what was measured, beside what, and the ratio. */
final class Table {

  private static final String LINE = "%-34s %6s | %10s %10s | %-26s %10s %10s | %7s %7s | %s%n";

  private final PrintStream out;

  Table(PrintStream out) {
    this.out = out;
    out.printf(
        LINE, "what", "jobs", "ms", "CPU ms", "beside", "ms", "CPU ms", "ratio", "of CPU", "goal");
  }

  /** Prints medians of runs in turn, and the medians of their ratios. */
  void pair(
      String what, String jobs, List<Figure> ours, String beside, List<Figure> theirs, String goal) {
    Figure mine = Figure.median(ours);
    Figure other = Figure.median(theirs);
    Figure ratio = Figure.ratio(ours, theirs);
    out.printf(
        LINE,
        what,
        jobs,
        millis(mine.wall()),
        millis(mine.cpu()),
        beside,
        millis(other.wall()),
        millis(other.cpu()),
        number(ratio.wall(), 2),
        number(ratio.cpu(), 2),
        goal);
  }

  /** Prints medians that stand beside nothing. */
  void alone(String what, String jobs, List<Figure> ours, String goal) {
    Figure mine = Figure.median(ours);
    out.printf(
        LINE, what, jobs, millis(mine.wall()), millis(mine.cpu()), "", "", "", "", "", goal);
  }

  private static String millis(double nanos) {
    double millis = nanos / 1e6;
    return Double.isNaN(nanos) ? "" : number(millis, millis < 1 ? 4 : millis < 100 ? 1 : 0);
  }

  private static String number(double number, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", number);
  }
}
