package org.pourbook.book.out;

import java.util.EnumMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Objects;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The looks as styles of one workbook. */
final class Styles {

  static final String FONT = "Arial";

  /** Hair lines between rows. */
  private static final String RULE_GREY = "BFBFBF";

  /** The band behind headings. */
  private static final String BAND_GREY = "F2F2F2";

  /** The accent, thinned, behind cells that may be changed. */
  private static final String EDIT_TINT = "EAF2F5";

  private final XSSFWorkbook workbook;
  private final Map<Look, XSSFCellStyle> plain = new EnumMap<>(Look.class);
  private final Map<Look, XSSFCellStyle> quoted = new EnumMap<>(Look.class);

  Styles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    XSSFFont usual = workbook.getFontAt(0);
    usual.setFontName(FONT);
    usual.setFontHeightInPoints((short) 10);
    for (Look look : Look.values()) {
      plain.put(look, style(look));
    }
  }

  CellStyle of(Look look) {
    return Objects.requireNonNull(plain.get(look));
  }

  /** Returns the style for text that a spreadsheet program would else take for a formula. */
  CellStyle quoted(Look look) {
    return quoted.computeIfAbsent(
        look,
        key -> {
          XSSFCellStyle style = style(key);
          style.setQuotePrefixed(true);
          return style;
        });
  }

  /** Returns a colour of three hexadecimal pairs, red first. */
  static XSSFColor colour(String rgb) {
    return new XSSFColor(bytes(rgb));
  }

  /** Returns the three bytes of a colour, red first. */
  static byte[] bytes(String rgb) {
    return HexFormat.of().parseHex(rgb);
  }

  private XSSFCellStyle style(Look look) {
    XSSFCellStyle style = workbook.createCellStyle();
    XSSFFont font = workbook.createFont();
    font.setFontName(FONT);
    font.setFontHeightInPoints((short) look.points());
    font.setBold(look.isBold());
    font.setColor(colour(look.ink().rgb()));
    style.setFont(font);
    style.setDataFormat(workbook.createDataFormat().getFormat(look.format()));
    style.setAlignment(look.alignment());
    style.setIndention((short) (look.isIndented() ? 1 : 0));
    style.setVerticalAlignment(
        look.line() == Look.Line.HEADING ? VerticalAlignment.BOTTOM : VerticalAlignment.CENTER);
    style.setWrapText(look.isWrapped());
    style.setLocked(look.isLocked());
    lines(style, look.line());
    return style;
  }

  private static void lines(XSSFCellStyle style, Look.Line line) {
    switch (line) {
      case NONE -> {}
      case ROW -> below(style, BorderStyle.HAIR, RULE_GREY);
      case EDIT -> {
        below(style, BorderStyle.HAIR, RULE_GREY);
        fill(style, EDIT_TINT);
      }
      case WRITE -> below(style, BorderStyle.THIN, Look.Ink.GREY.rgb());
      case HINT -> fill(style, BAND_GREY);
      case HEADING, BAND -> {
        below(style, BorderStyle.MEDIUM, Look.Ink.ACCENT.rgb());
        fill(style, BAND_GREY);
      }
      case BOX -> {
        XSSFColor grey = colour(Look.Ink.GREY.rgb());
        below(style, BorderStyle.THIN, Look.Ink.GREY.rgb());
        style.setBorderTop(BorderStyle.THIN);
        style.setTopBorderColor(grey);
        style.setBorderLeft(BorderStyle.THIN);
        style.setLeftBorderColor(grey);
        style.setBorderRight(BorderStyle.THIN);
        style.setRightBorderColor(grey);
      }
    }
  }

  private static void fill(XSSFCellStyle style, String rgb) {
    style.setFillForegroundColor(colour(rgb));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
  }

  private static void below(XSSFCellStyle style, BorderStyle border, String rgb) {
    style.setBorderBottom(border);
    style.setBottomBorderColor(colour(rgb));
  }
}
