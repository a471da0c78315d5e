package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.pourbook.measure.Length;

/** Like straight runs of bars in one section, before they are lapped. */
record Runs(Length run, int count) {

  /** Returns the runs gathered by length, longest first. */
  static List<Runs> gathered(List<Length> lengths) {
    Map<Length, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
    lengths.forEach(length -> counts.merge(length, 1, Integer::sum));
    List<Runs> runs = new ArrayList<>();
    counts.forEach((length, count) -> runs.add(new Runs(length, count)));
    return runs;
  }
}
