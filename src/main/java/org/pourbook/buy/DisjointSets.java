package org.pourbook.buy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Things by index that are gathered into groups by joining two at a time (union-find). */
final class DisjointSets {

  private final int[] group;
  private final Map<Object, Integer> first = new HashMap<>();

  /** Begins with each thing alone. */
  DisjointSets(int size) {
    this.group = new int[size];
    for (int i = 0; i < size; i++) {
      group[i] = i;
    }
  }

  void join(int first, int second) {
    int a = root(first);
    int b = root(second);
    group[Math.max(a, b)] = Math.min(a, b);
  }

  /** Joins a thing to all others of which the same was said before. */
  void joinBy(Object shared, int index) {
    Integer other = first.putIfAbsent(shared, index);
    if (other != null) {
      join(other, index);
    }
  }

  private int root(int index) {
    int root = index;
    while (group[root] != root) {
      root = group[root];
    }
    group[index] = root;
    return root;
  }

  /** Returns the groups by their first index, each ascending. */
  List<List<Integer>> groups() {
    Map<Integer, List<Integer>> groups = new TreeMap<>();
    for (int i = 0; i < group.length; i++) {
      groups.computeIfAbsent(root(i), k -> new ArrayList<>()).add(i);
    }
    return List.copyOf(groups.values());
  }
}
