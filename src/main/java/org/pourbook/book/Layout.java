package org.pourbook.book;

import java.util.Optional;
import java.util.OptionalInt;

/** The number of the layout in which this version writes its workbooks, templates among them. */
public final class Layout {

  /**
   * Raised by one whenever a sheet or a column that a command reads is added, or means something
   * else. Workbooks of the first layout do not tell it.
   */
  public static final int NUMBER = 2;

  /** What stands beside the number, on sheet Read first and on Basis. */
  public static final String LABEL = "Layout";

  private static final int FIRST = 1;

  private Layout() {}

  /**
   * Returns what sets a workbook apart from those that this version writes; empty for one of the
   * same layout.
   *
   * @param found the number it tells; none where it tells none
   */
  public static Optional<Difference> difference(OptionalInt found) {
    int number = found.orElse(FIRST);
    if (number == NUMBER) {
      return Optional.empty();
    }
    boolean older = number < NUMBER;
    return Optional.of(
        new Difference(
            (older ? "an older version (layout " : "a newer version (layout ") + number + ")",
            older
                ? "layout " + NUMBER + "; it is read by its headings all the same"
                : "layout "
                    + NUMBER
                    + " or older; what is new in it is not read: get the newer"
                    + " version of pourbook"));
  }

  /** In words for a note: what it is of, and what would be right. */
  public record Difference(String of, String expected) {}
}
