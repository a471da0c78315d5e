package org.pourbook.book.out;

/**
 * A line of Checks: the same figure, found in one place and in another.
 *
 * @param job empty for the whole workbook
 * @param whatThen what to do where they differ
 */
record Check(String job, String what, Figure found, Figure against, String whatThen) {

  /** Half a cent, and less of anything else than anybody orders. */
  static final double SMALL = 0.005;

  /** Said of what a formula would have given. */
  static final String TYPED_OVER = "Look for a figure that was typed over a formula";

  double difference() {
    return found.value() - against.value();
  }

  boolean isOk() {
    return Math.abs(difference()) < SMALL;
  }

  /**
   * A figure of a check.
   *
   * @param formula empty for one that the tool stored
   */
  record Figure(String formula, double value) {

    static Figure stored(double value) {
      return new Figure("", value);
    }

    Cell cell() {
      return formula.isEmpty() ? Cell.of(value) : Cell.formula(formula, value);
    }

    /** Returns the sum of both, live where both are. */
    Figure plus(Figure other) {
      boolean live = !formula.isEmpty() && !other.formula.isEmpty();
      return new Figure(live ? formula + "+" + other.formula : "", value + other.value);
    }
  }
}
