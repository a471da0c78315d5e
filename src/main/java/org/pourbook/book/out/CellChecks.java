package org.pourbook.book.out;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidation.ErrorStyle;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.pourbook.book.CellKind;
import org.pourbook.book.InputColumn;
import org.pourbook.book.InputSheet;

/**
 * What a spreadsheet program says when a cell is entered and typed into: lists to choose from, what
 * to write, and a warning, which may be overruled, for what makes no sense.
 */
final class CellChecks {

  /** The last row with lists and messages, as the spreadsheet counts. */
  static final int LAST_ROW = 2_000;

  /** Days are counted from 1900; before this one a day is a slip of the pen. */
  private static final String FIRST_DAY = "36526";

  private static final int LONGEST_TITLE = 32;

  private final SXSSFSheet sheet;
  private final InputSheet input;

  CellChecks(SXSSFSheet sheet, InputSheet input) {
    this.sheet = sheet;
    this.input = input;
  }

  /** Adds the check of a column; rows and columns from 0. */
  void add(InputColumn column, int index, int firstRow) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidation check =
        helper.createValidation(
            constraint(helper, column),
            new CellRangeAddressList(firstRow, LAST_ROW - 1, index, index));
    check.setErrorStyle(ErrorStyle.WARNING);
    check.setEmptyCellAllowed(true);
    // Of a list the format says by "false" that its arrow is shown; POI turns it round.
    check.setSuppressDropDownArrow(true);
    check.setShowPromptBox(true);
    check.createPromptBox(cut(column.heading()), prompt(column));
    check.setShowErrorBox(true);
    check.createErrorBox(cut(column.heading()), expected(column));
    sheet.addValidationData(check);
  }

  private DataValidationConstraint constraint(DataValidationHelper helper, InputColumn column) {
    boolean zero = column.least() == InputColumn.Least.ZERO;
    if (!column.choices().isEmpty()) {
      return helper.createExplicitListConstraint(column.choices().toArray(new String[0]));
    }
    if (isCodeOfJob(column)) {
      return helper.createFormulaListConstraint(
          "Jobs!$A$" + TemplateSheet.FIRST_ROW + ":$A$" + LAST_ROW);
    }
    return switch (column.kind()) {
      case COUNT ->
          helper.createIntegerConstraint(OperatorType.GREATER_OR_EQUAL, zero ? "0" : "1", null);
      case PERCENT, MONEY ->
          helper.createDecimalConstraint(OperatorType.GREATER_OR_EQUAL, "0", null);
      case DATE ->
          helper.createDateConstraint(OperatorType.GREATER_OR_EQUAL, FIRST_DAY, null, null);
      default -> helper.createTextLengthConstraint(OperatorType.LESS_THAN, "1000", null);
    };
  }

  private boolean isCodeOfJob(InputColumn column) {
    return column.heading().equals("Job")
        && input != InputSheet.JOBS
        && column.kind() == CellKind.CODE;
  }

  static String prompt(InputColumn column) {
    String usual = column.usual().isEmpty() ? "" : " Blank: " + column.usual() + ".";
    String hint = column.hint().isEmpty() ? "text" : column.hint();
    return Character.toUpperCase(hint.charAt(0)) + hint.substring(1) + "." + usual;
  }

  private static String expected(InputColumn column) {
    if (!column.choices().isEmpty()) {
      return "Expected: " + String.join(", ", column.choices()) + ".";
    }
    return switch (column.kind()) {
      case COUNT -> "Expected: a whole number.";
      case PERCENT, MONEY -> "Expected: a number, not below zero.";
      case DATE -> "Expected: a date.";
      case CODE -> "Expected: a code that the sheet Jobs holds.";
      default -> "Expected: a shorter text.";
    };
  }

  private static String cut(String title) {
    return title.substring(0, Math.min(title.length(), LONGEST_TITLE));
  }
}
