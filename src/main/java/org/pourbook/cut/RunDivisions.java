package org.pourbook.cut;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The divisions of a kind of runs that may pay: all of them where lengths are few, else those whose
 * pieces are whole stock, parts of it, or what other pieces leave of it.
 */
final class RunDivisions {
  /** Lengths that a piece may have up to which every division is looked at. */
  private static final int FEW_LENGTHS = 40;

  private static final int MOST = 300;

  private final RunKind kind;
  private final long step;
  private final int most;
  private final Set<List<Long>> found = new LinkedHashSet<>();

  private RunDivisions(RunKind kind, long step, int most) {
    this.kind = kind;
    this.step = step;
    this.most = most;
  }

  /**
   * Returns the divisions, the one of full lengths first in front; without it none.
   *
   * @param marks lengths that a piece may well have, the best first
   * @param most how many divisions, where lengths are not few
   */
  static List<List<Long>> of(RunKind kind, CutJob job, Collection<Long> marks, int most) {
    RunDivisions divisions = new RunDivisions(kind, job.step().nanometres(), most);
    kind.fullFirst().ifPresent(first -> divisions.fill(first, wholes(kind, job), marks));
    return List.copyOf(divisions.found);
  }

  private static Set<Long> wholes(RunKind kind, CutJob job) {
    Set<Long> wholes = new TreeSet<>(Comparator.reverseOrder());
    for (CutJob.Stock stock : job.stock()) {
      long length = stock.length().roundedDownTo(job.step()).nanometres();
      if (stock.limit() > 0 && length >= kind.least() && length <= kind.most()) {
        wholes.add(length);
      }
    }
    if (kind.longest() <= kind.most()) {
      wholes.add(kind.longest());
    }
    return wholes;
  }

  private void fill(List<Long> first, Set<Long> wholes, Collection<Long> marks) {
    found.add(first);
    if ((kind.most() - kind.least()) / step < FEW_LENGTHS && all(new ArrayList<>(), kind.total())) {
      return;
    }
    found.clear();
    found.add(first);
    List<List<Long>> begun = new ArrayList<>();
    begin(wholes.stream().toList(), 0, new ArrayList<>(), begun);
    for (List<Long> before : begun) {
      long rest = kind.total() - before.stream().mapToLong(l -> l).sum();
      add(before, rest, Math.floorDiv(rest / 2, step) * step);
    }
    for (long mark : marks) {
      for (List<Long> before : begun) {
        add(before, kind.total() - before.stream().mapToLong(l -> l).sum(), mark);
      }
    }
  }

  /** Adds every division; returns false where they are too many. */
  private boolean all(List<Long> before, long rest) {
    int left = kind.pieces() - before.size();
    if (left == 0) {
      found.add(List.copyOf(before));
      return found.size() <= MOST;
    }
    long longest = before.isEmpty() ? kind.most() : before.get(before.size() - 1);
    long high = Math.min(longest, rest - (left - 1) * kind.shortest());
    high = left == 1 ? rest : Math.floorDiv(high, step) * step;
    for (long piece = high; piece * left >= rest && piece >= kind.shortest(); piece -= step) {
      before.add(piece);
      boolean few = piece > longest || all(before, rest - piece);
      before.remove(before.size() - 1);
      if (!few) {
        return false;
      }
    }
    return true;
  }

  /** Adds all ways to begin a run with whole stock and have two pieces left. */
  private void begin(List<Long> wholes, int from, List<Long> before, List<List<Long>> begun) {
    if (before.size() == kind.pieces() - 2) {
      begun.add(List.copyOf(before));
      return;
    }
    for (int at = from; at < wholes.size() && begun.size() < MOST; at++) {
      before.add(wholes.get(at));
      begin(wholes, at, before, begun);
      before.remove(before.size() - 1);
    }
  }

  /** Adds the division whose last two pieces are one of this length and what is left. */
  private void add(List<Long> before, long rest, long piece) {
    long other = rest - piece;
    if (found.size() < most && isPiece(piece) && isPiece(other)) {
      List<Long> division = new ArrayList<>(before);
      division.add(piece);
      division.add(other);
      division.sort(Comparator.reverseOrder());
      found.add(List.copyOf(division));
    }
  }

  private boolean isPiece(long length) {
    return length >= kind.shortest() && length <= kind.longest();
  }
}
