package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pourbook.measure.Length;

/**
 * The linear program over all ways to cut and the divisions of runs at once: of each length no less
 * is cut than the pieces wanted and those of the divisions taken. It works in floating point and
 * bounds nothing: it says which divisions are worth trying.
 */
final class RunRelaxation {
  private static final int ROUNDS = 400;

  /**
   * What the program gave.
   *
   * @param costMicros of the stock opened, not whole
   * @param times how often each division of each kind is taken, not whole
   */
  record Result(double costMicros, double[][] times) {}

  private final CutModel model;
  private final MasterProgram program;
  private final int[][] taken;

  private RunRelaxation(
      Normalised all, int[] wanted, List<RunKind> kinds, List<List<List<Long>>> divisions) {
    this.model = all.model();
    this.program =
        new MasterProgram(
            model,
            wanted,
            kinds.stream().mapToDouble(RunKind::count).toArray(),
            kinds.stream().mapToDouble(kind -> 2.0 * kind.pieces() * kind.courses()).toArray());
    this.taken = new int[kinds.size()][];
    for (int r = 0; r < taken.length; r++) {
      int row = model.items() + r;
      int courses = kinds.get(r).courses();
      taken[r] =
          divisions.get(r).stream().mapToInt(d -> addDivision(all, d, row, courses)).toArray();
    }
  }

  /**
   * Returns the program's solution; empty where it is too large or the stock is too little.
   *
   * @param divisions of each kind, at least one
   */
  static Optional<Result> solve(
      CutJob job, List<RunKind> kinds, List<List<List<Long>>> divisions, Effort effort) {
    Normalised all = Normalised.of(job.ofPieces(most(job, kinds, divisions)));
    Optional<Knapsack> knapsack = Knapsack.of(all.model(), effort.sums());
    if (knapsack.isEmpty()) {
      return Optional.empty();
    }
    int[] wanted = new int[all.model().items()];
    for (CutJob.Piece piece : job.pieces()) {
      wanted[item(all, piece.length().roundedUpTo(job.step()))] += piece.count();
    }
    try {
      return new RunRelaxation(all, wanted, kinds, divisions)
          .generate(knapsack.get(), effort, all.costUnit());
    } catch (ArithmeticException e) {
      return Optional.empty(); // the program went astray; other divisions are tried without it
    }
  }

  /** Returns the pieces wanted, and of each length as many as divisions can take. */
  private static List<CutJob.Piece> most(
      CutJob job, List<RunKind> kinds, List<List<List<Long>>> divisions) {
    List<CutJob.Piece> pieces = new ArrayList<>(job.pieces());
    for (int r = 0; r < kinds.size(); r++) {
      int runs = Math.multiplyExact(kinds.get(r).count(), kinds.get(r).courses());
      Map<Long, Integer> most = new TreeMap<>();
      for (List<Long> division : divisions.get(r)) {
        counted(division).forEach((length, count) -> most.merge(length, count, Math::max));
      }
      most.forEach(
          (length, count) ->
              pieces.add(
                  new CutJob.Piece(new Length(length), Math.multiplyExact(runs, count), "")));
    }
    return pieces;
  }

  private static Map<Long, Integer> counted(List<Long> division) {
    Map<Long, Integer> count = new TreeMap<>();
    division.forEach(length -> count.merge(length, 1, Integer::sum));
    return count;
  }

  private static int item(Normalised all, Length length) {
    return all.lengths().indexOf(length);
  }

  private int addDivision(Normalised all, List<Long> division, int kindRow, int courses) {
    Map<Long, Integer> count = counted(division);
    int[] rows = new int[count.size() + 1];
    double[] values = new double[rows.length];
    int at = 0;
    for (Map.Entry<Long, Integer> piece : count.entrySet()) {
      rows[at] = item(all, new Length(piece.getKey()));
      values[at++] = -courses * (double) piece.getValue();
    }
    rows[at] = kindRow;
    values[at] = 1;
    return program.simplex().add(rows, values, 0);
  }

  private Optional<Result> generate(Knapsack knapsack, Effort effort, long costUnit) {
    Simplex simplex = program.simplex();
    boolean added = true;
    for (int round = 0; added && round < ROUNDS; round++) {
      if (simplex.solve(effort.pivots()) == effort.pivots()) {
        return Optional.empty();
      }
      double[] duals = simplex.duals();
      added = program.addPaying(knapsack.best(model, program.worth(duals)).columns(), duals);
    }
    return program.isShort()
        ? Optional.empty()
        : Optional.of(new Result(simplex.objective() * costUnit, times()));
  }

  private double[][] times() {
    double[] x = program.simplex().solution();
    double[][] times = new double[taken.length][];
    for (int r = 0; r < taken.length; r++) {
      times[r] = Arrays.stream(taken[r]).mapToDouble(column -> x[column]).toArray();
    }
    return times;
  }
}
