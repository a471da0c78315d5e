package org.pourbook.book.in;

import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.measure.NumberText;

/** A cell's value in words, the same on every machine. */
final class CellWords {

  private CellWords() {}

  /** Returns the value as a text cell would hold it; empty for a blank cell. */
  static String of(GivenCell cell) {
    if (cell instanceof GivenCell.Text text) {
      return text.text();
    }
    if (cell instanceof GivenCell.Number number) {
      return NumberText.text(NumberText.of(number.number())) + (number.percent() ? "%" : "");
    }
    if (cell instanceof GivenCell.Date date) {
      return date.date().toString();
    }
    if (cell instanceof GivenCell.Time time) {
      return time.time().toString();
    }
    if (cell instanceof GivenCell.YesNo yesNo) {
      return yesNo.yes() ? "yes" : "no";
    }
    return cell instanceof GivenCell.Error error ? error.code() : "";
  }

  /** Returns what a problem says was found. */
  static String found(GivenCell cell) {
    return cell instanceof GivenCell.Blank ? "blank" : of(cell);
  }
}
