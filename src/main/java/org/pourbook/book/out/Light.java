package org.pourbook.book.out;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.PatternFormatting;
import org.apache.poi.ss.usermodel.SheetConditionalFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Words that tell whether all is well; colour only says it again. */
final class Light {

  static final String OK = "ok";
  static final String LOOK = "look";

  private static final String RED = "9C2B1F";
  private static final String RED_TINT = "F8E3E0";

  private Light() {}

  /** Totals of columns of one sheet that are those of another; empty tables have none. */
  record Pair(
      SheetSpec<?> one, List<String> headings, SheetSpec<?> other, List<String> otherHeadings) {

    /** Returns a formula that gives nothing where both are the same, in one figure or an error. */
    private String difference() {
      return "ABS(" + sum(one, headings) + "-(" + sum(other, otherHeadings) + "))";
    }

    private static String sum(SheetSpec<?> of, List<String> headings) {
      return headings.stream().map(of::total).collect(Collectors.joining("+"));
    }

    private double value() {
      double first = headings.stream().mapToDouble(one::totalOf).sum();
      return Math.abs(first - otherHeadings.stream().mapToDouble(other::totalOf).sum());
    }
  }

  /**
   * Returns the words that tell whether sheets agree.
   *
   * @param what the sheets, in words
   */
  static Cell of(List<Pair> pairs, String what) {
    String sum = pairs.stream().map(Pair::difference).collect(Collectors.joining("+"));
    String agree = OK + ": " + what + " agree";
    String differ = LOOK + ": " + what + " do not agree";
    boolean isOk = pairs.stream().mapToDouble(Pair::value).sum() < Check.SMALL;
    return Cell.formula(
        "IF(ISNUMBER("
            + sum
            + "),IF("
            + sum
            + "<"
            + Check.SMALL
            + ",\""
            + agree
            + "\",\""
            + differ
            + "\"),\""
            + differ
            + "\")",
        isOk ? agree : differ);
  }

  /** Makes cells red that begin with {@code look}; {@code first} is the first of them. */
  static void colour(XSSFSheet sheet, String first, CellRangeAddress cells) {
    SheetConditionalFormatting formatting = sheet.getSheetConditionalFormatting();
    ConditionalFormattingRule rule =
        formatting.createConditionalFormattingRule(
            "LEFT(" + first + "," + LOOK.length() + ")=\"" + LOOK + "\"");
    XSSFColor red = Styles.colour(RED);
    rule.createFontFormatting().setFontColor(red);
    PatternFormatting fill = rule.createPatternFormatting();
    fill.setFillBackgroundColor(Styles.colour(RED_TINT));
    fill.setFillPattern(PatternFormatting.SOLID_FOREGROUND);
    formatting.addConditionalFormatting(new CellRangeAddress[] {cells}, rule);
  }
}
