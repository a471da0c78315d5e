package org.pourbook.book.out;

import java.util.List;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTDLbls;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextCharacterProperties;

/**
 * The totals of a table's columns of money as bars. It reads the line of totals, so it follows a
 * price that is changed.
 *
 * @param headings of the columns, which stand side by side
 */
record CostChart(SheetSpec<?> spec, List<String> headings, String currency)
    implements SheetSpec.Below {

  private static final String FORMAT = "#,##0";

  /** Rows it covers, and the columns to which it goes. */
  private static final int ROWS = 12;

  private static final int COLUMNS = 9;

  /** Between bars, in percent of a bar's width. */
  private static final int GAP = 60;

  /** In hundredths of a point. */
  private static final int TITLE_SIZE = 1_000;

  CostChart {
    headings = List.copyOf(headings);
  }

  @Override
  public int writeTo(XSSFSheet sheet, int row) {
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    XSSFChart chart =
        drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 0, row, COLUMNS, row + ROWS));
    title(chart);
    draw(chart);
    return ROWS + 1;
  }

  /** Writes the title in the chart: a cell under the table would be read as one of its rows. */
  private void title(XSSFChart chart) {
    chart.setTitleText("Cost by kind, " + currency);
    chart.setTitleOverlay(false);
    CTTextCharacterProperties letters =
        chart.getCTChart().getTitle().getTx().getRich().getPArray(0).getRArray(0).getRPr();
    // The library would name the machine's language.
    letters.setLang("en-US");
    letters.setSz(TITLE_SIZE);
    letters.setB(true);
  }

  private void draw(XSSFChart chart) {
    XDDFCategoryAxis kinds = chart.createCategoryAxis(AxisPosition.LEFT);
    kinds.setOrientation(AxisOrientation.MAX_MIN);
    kinds.getOrAddShapeProperties().setLineProperties(line());
    XDDFValueAxis money = chart.createValueAxis(AxisPosition.BOTTOM);
    money.setMinimum(0);
    money.setNumberFormat(FORMAT);
    money.setVisible(false);
    XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, kinds, money);
    bars.setBarDirection(BarDirection.BAR);
    bars.setGapWidth(GAP);
    bars.setVaryColors(false);
    XDDFChartData.Series series = bars.addSeries(kinds(), money());
    series.setTitle("Cost", null);
    series.setFillProperties(
        new XDDFSolidFillProperties(XDDFColor.from(Styles.bytes(Look.Ink.ACCENT.rgb()))));
    chart.plot(bars);
    label(chart);
  }

  private static XDDFLineProperties line() {
    return new XDDFLineProperties(new XDDFNoFillProperties());
  }

  /** Writes each bar's amount at its end. */
  private static void label(XSSFChart chart) {
    CTDLbls labels =
        chart.getCTChart().getPlotArea().getBarChartArray(0).getSerArray(0).addNewDLbls();
    labels.addNewNumFmt().setFormatCode(FORMAT);
    labels.getNumFmt().setSourceLinked(false);
    labels.addNewShowLegendKey().setVal(false);
    labels.addNewShowVal().setVal(true);
    labels.addNewShowCatName().setVal(false);
    labels.addNewShowSerName().setVal(false);
    labels.addNewShowPercent().setVal(false);
    labels.addNewShowBubbleSize().setVal(false);
  }

  private XDDFCategoryDataSource kinds() {
    return XDDFDataSourcesFactory.fromArray(
        headings.toArray(new String[0]), range(SheetSpec.HEADING_ROW), column());
  }

  private XDDFNumericalDataSource<Double> money() {
    Double[] totals =
        headings.stream().map(heading -> spec.totalOf(heading)).toArray(Double[]::new);
    return XDDFDataSourcesFactory.fromArray(totals, range(SheetSpec.TOTAL_ROW), column());
  }

  private int column() {
    return CellReference.convertColStringToIndex(spec.letter(headings.get(0)));
  }

  private String range(int row) {
    String first = spec.letter(headings.get(0));
    String last = spec.letter(headings.get(headings.size() - 1));
    return Span.cell(spec.name(), first, row) + ":$" + last + "$" + row;
  }
}
