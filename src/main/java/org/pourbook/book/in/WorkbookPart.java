package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Reads {@code workbook.xml}: the sheets in order and how dates are counted. */
final class WorkbookPart extends DefaultHandler {

  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private final List<SheetEntry> sheets = new ArrayList<>();
  private boolean date1904;

  /** A sheet's name and the id of the relation to its part. */
  record SheetEntry(String name, String relation) {}

  List<SheetEntry> sheets() {
    return sheets;
  }

  /** Returns whether day 0 is 1904-01-01. */
  boolean date1904() {
    return date1904;
  }

  @Override
  public void startElement(String uri, String name, String qName, Attributes attributes)
      throws XlsxBook.Damage {
    if (name.equals("workbookPr")) {
      String value = attributes.getValue("date1904");
      date1904 = value != null && (value.equals("1") || value.equals("true"));
    } else if (name.equals("sheet")) {
      String sheet = attributes.getValue("name");
      String relation = attributes.getValue(RELATIONS, "id");
      if (sheet == null || relation == null) {
        throw new XlsxBook.Damage("a sheet has no name or no part");
      }
      sheets.add(new SheetEntry(sheet, relation));
    }
  }
}
