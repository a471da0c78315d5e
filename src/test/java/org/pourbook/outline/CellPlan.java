package org.pourbook.outline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.pourbook.job.Shape;

/** A plan of whole square cells: moving its sides by whole cells can be counted out. */
final class CellPlan {

  /** Side of a cell. */
  static final long CELL_MM = 500;

  private final boolean[][] filled;

  private CellPlan(boolean[][] filled) {
    this.filled = filled;
  }

  /**
   * Returns a plan in one piece, perhaps with openings, that nowhere touches itself at a corner.
   */
  static CellPlan random(SplittableRandom random, int size, int cells) {
    boolean[][] filled = new boolean[size][size];
    filled[size / 2][size / 2] = true;
    CellPlan plan = new CellPlan(filled);
    for (int i = 0; i < cells; i++) {
      int x = random.nextInt(size);
      int y = random.nextInt(size);
      boolean joins =
          plan.has(x - 1, y) || plan.has(x + 1, y) || plan.has(x, y - 1) || plan.has(x, y + 1);
      if (joins) {
        filled[x][y] = true;
      }
    }
    while (plan.fillAPinch()) {}
    return plan;
  }

  private boolean fillAPinch() {
    for (int x = 0; x <= filled.length; x++) {
      for (int y = 0; y <= filled.length; y++) {
        if (has(x - 1, y - 1) && has(x, y) && !has(x, y - 1) && !has(x - 1, y)) {
          filled[x - 1][y] = true;
          return true;
        }
        if (has(x - 1, y) && has(x, y - 1) && !has(x, y) && !has(x - 1, y - 1)) {
          filled[x][y] = true;
          return true;
        }
      }
    }
    return false;
  }

  boolean has(int x, int y) {
    return x >= 0 && y >= 0 && x < filled.length && y < filled.length && filled[x][y];
  }

  int size() {
    return filled.length;
  }

  int cells() {
    int cells = 0;
    for (int x = 0; x < size(); x++) {
      for (int y = 0; y < size(); y++) {
        cells += has(x, y) ? 1 : 0;
      }
    }
    return cells;
  }

  /** Returns the outline, the outer ring first; a side goes over all cells in one line. */
  Shape.Outline outline() {
    Map<List<Integer>, List<Integer>> steps = new LinkedHashMap<>();
    for (int x = 0; x < size(); x++) {
      for (int y = 0; y < size(); y++) {
        if (has(x, y)) {
          step(steps, has(x, y - 1), x, y, x + 1, y);
          step(steps, has(x + 1, y), x + 1, y, x + 1, y + 1);
          step(steps, has(x, y + 1), x + 1, y + 1, x, y + 1);
          step(steps, has(x - 1, y), x, y + 1, x, y);
        }
      }
    }
    // The first step found is the outer ring's: its lowest cell furthest left.
    List<Shape.Ring> rings = new ArrayList<>();
    while (!steps.isEmpty()) {
      rings.add(ring(steps));
    }
    return new Shape.Outline(rings);
  }

  private static void step(
      Map<List<Integer>, List<Integer>> steps, boolean inner, int x1, int y1, int x2, int y2) {
    if (!inner) {
      steps.put(List.of(x1, y1), List.of(x2, y2));
    }
  }

  private static Shape.Ring ring(Map<List<Integer>, List<Integer>> steps) {
    List<List<Integer>> places = new ArrayList<>();
    List<Integer> at = steps.keySet().iterator().next();
    while (steps.containsKey(at)) {
      places.add(at);
      at = steps.remove(at);
    }
    List<long[]> corners = new ArrayList<>();
    int n = places.size();
    for (int i = 0; i < n; i++) {
      List<Integer> before = places.get((i + n - 1) % n);
      List<Integer> after = places.get((i + 1) % n);
      boolean straight = before.get(0).equals(after.get(0)) || before.get(1).equals(after.get(1));
      if (!straight) {
        corners.add(new long[] {places.get(i).get(0) * CELL_MM, places.get(i).get(1) * CELL_MM});
      }
    }
    return Drawn.millimetres(corners);
  }

  /** Returns the number of cells left when all sides move in: no empty cell is that near. */
  int cellsMovedIn(int distance) {
    return count(distance, distance, (x, y) -> has(x, y) && !any(x, y, distance, false));
  }

  /** Returns the number of cells when all sides move out: a filled cell is that near. */
  int cellsMovedOut(int distance) {
    return count(distance, distance, (x, y) -> any(x, y, distance, true));
  }

  private boolean any(int x, int y, int distance, boolean wanted) {
    for (int i = x - distance; i <= x + distance; i++) {
      for (int j = y - distance; j <= y + distance; j++) {
        if (has(i, j) == wanted) {
          return true;
        }
      }
    }
    return false;
  }

  private int count(int below, int above, CellTest test) {
    int count = 0;
    for (int x = -below; x < size() + above; x++) {
      for (int y = -below; y < size() + above; y++) {
        count += test.test(x, y) ? 1 : 0;
      }
    }
    return count;
  }

  /** Whether a cell counts. */
  private interface CellTest {
    boolean test(int x, int y);
  }
}
