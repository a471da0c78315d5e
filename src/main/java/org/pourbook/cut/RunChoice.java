package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pourbook.measure.Length;

/**
 * How often each division is taken, for each kind of runs.
 *
 * @param times by kind; divisions that are not taken are left out
 */
record RunChoice(List<Map<List<Long>, Integer>> times) {

  /** Longest pieces first, so that full lengths come before all others. */
  static final Comparator<List<Long>> LONGEST_FIRST =
      (one, other) -> {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
          int order = Long.compare(other.get(i), one.get(i));
          if (order != 0) {
            return order;
          }
        }
        return Integer.compare(one.size(), other.size());
      };

  /** Returns full lengths first for all runs; empty where the stock is too short for some. */
  static Optional<RunChoice> fullFirst(List<RunKind> kinds) {
    List<Map<List<Long>, Integer>> times = new ArrayList<>();
    for (RunKind kind : kinds) {
      Optional<List<Long>> division = kind.fullFirst();
      if (division.isEmpty()) {
        return Optional.empty();
      }
      times.add(Map.of(division.get(), kind.count()));
    }
    return Optional.of(new RunChoice(times));
  }

  /** Returns this choice with so many runs of a kind divided otherwise. */
  RunChoice moved(int kind, List<Long> from, List<Long> to, int runs) {
    Map<List<Long>, Integer> changed = new TreeMap<>(LONGEST_FIRST);
    changed.putAll(times.get(kind));
    changed.merge(from, -runs, Integer::sum);
    changed.merge(to, runs, Integer::sum);
    changed.values().removeIf(left -> left == 0);
    List<Map<List<Long>, Integer>> all = new ArrayList<>(times);
    all.set(kind, changed);
    return new RunChoice(all);
  }

  /** Returns where the joints of each run lie: divisions are given to the runs in their order. */
  List<CutResult.Division> divisions(List<RunKind> kinds) {
    List<CutResult.Division> divisions = new ArrayList<>();
    for (int r = 0; r < kinds.size(); r++) {
      TreeMap<List<Long>, Integer> left = new TreeMap<>(LONGEST_FIRST);
      left.putAll(times.get(r));
      for (CutJob.Run run : kinds.get(r).runs()) {
        int open = run.count();
        while (open > 0) {
          Map.Entry<List<Long>, Integer> next = left.firstEntry();
          int taken = Math.min(open, next.getValue());
          List<Length> pieces = next.getKey().stream().map(Length::new).toList();
          divisions.add(new CutResult.Division(run, pieces, taken));
          open -= taken;
          left.merge(next.getKey(), -taken, Integer::sum);
          left.values().removeIf(count -> count == 0);
        }
      }
    }
    return divisions;
  }

  /** Returns the pieces that divisions are made of. */
  static List<CutJob.Piece> pieces(List<CutResult.Division> divisions) {
    List<CutJob.Piece> pieces = new ArrayList<>();
    for (CutResult.Division division : divisions) {
      Map<Length, Integer> count = new LinkedHashMap<>();
      int each = Math.multiplyExact(division.times(), division.run().courses());
      division.pieces().forEach(length -> count.merge(length, each, Math::addExact));
      count.forEach(
          (length, times) -> pieces.add(new CutJob.Piece(length, times, division.run().goesTo())));
    }
    return pieces;
  }
}
