package org.pourbook.book.out;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidation.ErrorStyle;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.pourbook.book.InputColumn;
import org.pourbook.book.InputSheet;

/**
 * What a spreadsheet program says when a cell is entered and typed into: lists to choose from, what
 * to write, and a warning, which may be overruled, for what makes no sense.
 */
final class CellChecks {

  private static final int LONGEST_TITLE = 32;

  private final XSSFSheet sheet;
  private final InputSheet input;
  private final InputCells cells;

  CellChecks(XSSFSheet sheet, InputSheet input, InputCells cells) {
    this.sheet = sheet;
    this.input = input;
    this.cells = cells;
  }

  /** Adds the check of a column; rows and columns from 0. */
  void add(InputColumn column, int index, int firstRow) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    CellCheck check = CellCheck.of(input, column, cells);
    boolean words = !column.choices().isEmpty();
    DataValidation validation =
        helper.createValidation(
            words
                ? helper.createExplicitListConstraint(column.choices().toArray(new String[0]))
                : constraint(helper, check),
            new CellRangeAddressList(firstRow, InputCells.LAST_ROW - 1, index, index));
    validation.setErrorStyle(ErrorStyle.WARNING);
    validation.setEmptyCellAllowed(true);
    // Of a list the format says by "false" that its arrow is shown; POI turns it round.
    validation.setSuppressDropDownArrow(true);
    validation.setShowPromptBox(true);
    validation.createPromptBox(cut(column.heading()), prompt(column));
    validation.setShowErrorBox(words || check.warns());
    String expected = words ? String.join(", ", column.choices()) : check.expected();
    validation.createErrorBox(cut(column.heading()), "Expected: " + expected + ".");
    sheet.addValidationData(validation);
  }

  private static DataValidationConstraint constraint(DataValidationHelper helper, CellCheck check) {
    return check.list()
        ? helper.createFormulaListConstraint(check.formula())
        : helper.createCustomConstraint(check.formula());
  }

  static String prompt(InputColumn column) {
    String usual = column.usual().isEmpty() ? "" : " Blank: " + column.usual() + ".";
    String hint = column.hint().isEmpty() ? "text" : column.hint();
    return Character.toUpperCase(hint.charAt(0)) + hint.substring(1) + "." + usual;
  }

  private static String cut(String title) {
    return title.substring(0, Math.min(title.length(), LONGEST_TITLE));
  }
}
