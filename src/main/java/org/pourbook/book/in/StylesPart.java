package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.pourbook.book.in.CellValues.CellStyle;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Reads {@code styles.xml}: which cell styles show dates and percentages. */
final class StylesPart extends DefaultHandler {

  private final Map<Integer, String> formats = new HashMap<>();
  private final Map<Integer, CellStyle> styles = new HashMap<>();
  private final List<CellStyle> cellStyles = new ArrayList<>();
  private boolean inCellStyles;

  /** Returns the styles by their index. */
  List<CellStyle> cellStyles() {
    return cellStyles;
  }

  @Override
  public void startElement(String uri, String name, String qName, Attributes attributes)
      throws XlsxBook.Damage {
    switch (name) {
      case "numFmt" -> {
        String code = attributes.getValue("formatCode");
        formats.put(id(attributes), code == null ? "General" : code);
      }
      case "cellXfs" -> inCellStyles = true;
      case "xf" -> {
        if (inCellStyles) {
          cellStyles.add(styles.computeIfAbsent(id(attributes), this::style));
        }
      }
      default -> {}
    }
  }

  @Override
  public void endElement(String uri, String name, String qName) {
    if (name.equals("cellXfs")) {
      inCellStyles = false;
    }
  }

  private static int id(Attributes attributes) throws XlsxBook.Damage {
    String id = attributes.getValue("numFmtId");
    try {
      return id == null ? 0 : Integer.parseInt(id);
    } catch (NumberFormatException e) {
      throw new XlsxBook.Damage("number format " + id);
    }
  }

  private CellStyle style(int id) {
    String format = formats.get(id);
    if (format == null) {
      format = BuiltinFormats.getBuiltinFormat(id);
    }
    return format == null ? CellStyle.PLAIN : CellStyle.of(id, format);
  }
}
