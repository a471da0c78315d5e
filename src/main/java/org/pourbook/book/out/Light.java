package org.pourbook.book.out;

import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.PatternFormatting;
import org.apache.poi.ss.usermodel.SheetConditionalFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFColor;

/** Words that tell whether all is well; colour only says it again. */
final class Light {

  static final String OK = "ok";
  static final String LOOK = "look";

  private static final String RED = "9C2B1F";
  private static final String RED_TINT = "F8E3E0";

  private Light() {}

  /** Makes cells red that begin with {@code look}; {@code first} is the first of them. */
  static void colour(SXSSFSheet sheet, String first, CellRangeAddress cells) {
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
