package org.pourbook.job;

import java.util.List;
import java.util.Optional;
import org.pourbook.measure.Length;

/**
 * Which sides of a section something applies to.
 *
 * @param all every side
 * @param names the sides by name where not all: {@code L1, L2, W1, W2} of a rectangle, point
 *     numbers of an outline; empty for none
 * @param run one straight run of a given length in place of sides
 */
public record Sides(boolean all, List<String> names, Optional<Length> run) {

  public static final Sides ALL = new Sides(true, List.of(), Optional.empty());
  public static final Sides NONE = new Sides(false, List.of(), Optional.empty());

  public Sides {
    names = List.copyOf(names);
  }

  public static Sides of(List<String> names) {
    return new Sides(false, names, Optional.empty());
  }

  public static Sides ofRun(Length length) {
    return new Sides(false, List.of(), Optional.of(length));
  }

  /** Returns whether a side of that name is among them; a given run names no side. */
  public boolean has(String side) {
    return all || names.contains(side);
  }

  public boolean isNone() {
    return !all && names.isEmpty() && run.isEmpty();
  }
}
