package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellReference;
import org.jspecify.annotations.Nullable;
import org.pourbook.book.in.CellValues.CellStyle;
import org.pourbook.job.GivenSheet.GivenCell;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads a sheet's part into rows; formulas by their stored values. */
final class SheetPart extends DefaultHandler {

  private static final int LAST_ROW = 1 << 20;
  private static final int LAST_COLUMN = 1 << 14;

  /** Blank cells left of others; no file need hold what they take in memory, 4 bytes each. */
  private static final int MOST_GAPS = 1 << 23;

  private static final int LETTERS = 26;

  /** Letters and digits of a cell's name. */
  private static final int MOST_LETTERS = 3;

  private static final int MOST_DIGITS = 7;

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][-+]?\\d{1,3})?");

  private final List<GivenCell> strings;
  private final List<CellStyle> styles;
  private final boolean date1904;
  private final int most;
  private final List<RawRow> rows = new ArrayList<>();

  private final List<GivenCell> cells = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private int gaps;
  private int row = -1;
  private int column = -1;
  private String type = "n";
  private String style = "";
  private boolean formula;
  private boolean valued;
  private boolean collecting;
  private int inReadingAid;

  /** Ends the reading of a part of which enough is read. */
  static final class Enough extends SAXException {
    private static final long serialVersionUID = 1L;
  }

  /**
   * Reads a sheet's part.
   *
   * @param most rows to be read; then comes {@link Enough}
   */
  SheetPart(List<GivenCell> strings, List<CellStyle> styles, boolean date1904, int most) {
    this.strings = strings;
    this.styles = styles;
    this.date1904 = date1904;
    this.most = most;
  }

  /** Returns the rows that hold something, in their order. */
  List<RawRow> rows() {
    rows.sort(Comparator.comparingInt(RawRow::index));
    return rows;
  }

  @Override
  public void startElement(String uri, String name, String qName, Attributes attributes)
      throws XlsxBook.Damage {
    switch (name) {
      case "row" -> startRow(attributes.getValue("r"));
      case "c" -> startCell(attributes);
      case "f" -> formula = true;
      case "v" -> startValue();
      case "t" -> collecting = type.equals("inlineStr") && inReadingAid == 0;
      case "rPh" -> inReadingAid++;
      default -> {}
    }
  }

  @Override
  public void endElement(String uri, String name, String qName) throws XlsxBook.Damage, Enough {
    switch (name) {
      case "row" -> endRow();
      case "c" -> endCell();
      case "v", "t" -> collecting = false;
      case "rPh" -> inReadingAid--;
      default -> {}
    }
  }

  @Override
  public void characters(char[] chars, int start, int length) {
    if (collecting) {
      text.append(chars, start, length);
    }
  }

  private void startRow(@Nullable String number) throws XlsxBook.Damage {
    try {
      row = number == null ? row + 1 : Integer.parseInt(number) - 1;
    } catch (NumberFormatException e) {
      throw new XlsxBook.Damage("row " + number);
    }
    if (row < 0 || row >= LAST_ROW) {
      throw new XlsxBook.Damage("row " + number);
    }
    column = -1;
    cells.clear();
  }

  private void endRow() throws Enough {
    RawRow read = new RawRow(row, cells);
    if (!read.isBlank()) {
      rows.add(read);
    }
    if (rows.size() >= most) {
      throw new Enough();
    }
  }

  private void startCell(Attributes attributes) throws XlsxBook.Damage {
    String reference = attributes.getValue("r");
    if (reference == null) {
      column++;
    } else {
      column = column(reference);
    }
    if (row < 0 || column < 0 || column >= LAST_COLUMN) {
      throw new XlsxBook.Damage("cell " + reference);
    }
    String cellType = attributes.getValue("t");
    type = cellType == null ? "n" : cellType;
    String cellStyle = attributes.getValue("s");
    style = cellStyle == null ? "" : cellStyle;
    formula = false;
    valued = false;
    text.setLength(0);
  }

  /** Returns the column of a cell's name ({@code AB12}), from 0; −1 where it is no name. */
  private static int column(String reference) {
    int column = 0;
    int at = 0;
    while (at < reference.length() && reference.charAt(at) >= 'A' && reference.charAt(at) <= 'Z') {
      column = column * LETTERS + reference.charAt(at) - 'A' + 1;
      at++;
    }
    int digits = reference.length() - at;
    boolean named = at >= 1 && at <= MOST_LETTERS && digits >= 1 && digits <= MOST_DIGITS;
    for (int i = at; named && i < reference.length(); i++) {
      named = reference.charAt(i) >= (i == at ? '1' : '0') && reference.charAt(i) <= '9';
    }
    return named ? column - 1 : -1;
  }

  private void startValue() {
    valued = true;
    collecting = true;
  }

  private void endCell() throws XlsxBook.Damage {
    GivenCell value = value();
    if (value instanceof GivenCell.Blank) {
      return;
    }
    gaps += Math.max(column - cells.size(), 0);
    if (gaps > MOST_GAPS) {
      throw new XlsxBook.Damage("cells far to the right in too many rows");
    }
    while (cells.size() <= column) {
      cells.add(RawRow.BLANK);
    }
    cells.set(column, value);
  }

  private GivenCell value() throws XlsxBook.Damage {
    String stored = text.toString();
    boolean wordy = type.equals("str") || type.equals("inlineStr");
    if (formula && (!valued || (stored.isBlank() && !wordy))) {
      return CellValues.NOT_CALCULATED;
    }
    if (stored.isBlank()) {
      return RawRow.BLANK;
    }
    return switch (type) {
      case "s" -> shared(stored.strip());
      case "str", "inlineStr" -> CellValues.text(StringsPart.unescaped(stored));
      case "b" -> new GivenCell.YesNo(stored.strip().equals("1"));
      case "e" -> new GivenCell.Error(stored.strip());
      case "d" -> CellValues.text(stored.replace("T00:00:00", ""));
      default -> number(stored.strip());
    };
  }

  private GivenCell shared(String index) throws XlsxBook.Damage {
    try {
      return strings.get(Integer.parseInt(index));
    } catch (NumberFormatException | IndexOutOfBoundsException e) {
      throw new XlsxBook.Damage("cell " + address() + " names a text that is not there");
    }
  }

  private GivenCell number(String stored) throws XlsxBook.Damage {
    return NUMBER.matcher(stored).matches()
        ? CellValues.number(Double.parseDouble(stored), cellStyle(), date1904)
        : new GivenCell.Error(stored);
  }

  private CellStyle cellStyle() throws XlsxBook.Damage {
    if (style.isEmpty() || (styles.isEmpty() && style.equals("0"))) {
      return CellStyle.PLAIN;
    }
    try {
      return styles.get(Integer.parseInt(style));
    } catch (NumberFormatException | IndexOutOfBoundsException e) {
      throw new XlsxBook.Damage("cell " + address() + " names a style that is not there");
    }
  }

  private String address() {
    return CellReference.convertNumToColString(column) + (row + 1);
  }
}
