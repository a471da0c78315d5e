package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** Tickets in workbooks, and headings that a table Ticket columns explains. */
class TicketWorkbooksTest extends BookkeepersDesk {

  /** What one plant calls the columns of its own, so that no heading is a known one. */
  private static final List<List<String>> ODD =
      List.of(
          List.of("Ticket", "Chit"),
          List.of("Date (d/m/y)", "Tag"),
          List.of("Supplier", "Werk"),
          List.of("Job", "Bau"),
          List.of("Material", "Ware"),
          List.of("Size", "Sorte"),
          List.of("Item", "Nummer"),
          List.of("Quantity", "Menge"),
          List.of("Unit", "Einheit"),
          List.of("Truck", "Wagen"),
          List.of("Batched", "Beladen"),
          List.of("Arrived", "Da"),
          List.of("Discharged", "Leer"),
          List.of("Water added", "Wasser"),
          List.of("Unit price", "Preis"),
          List.of("Amount", "Summe"),
          List.of("Charge", "Zuschlag"));

  private static List<CSVRecord> rows(Path csv) throws IOException {
    try (Reader in = Files.newBufferedReader(csv);
        CSVParser parser = CSVParser.parse(in, CSVFormat.RFC4180)) {
      return parser.getRecords();
    }
  }

  /** Writes a ticket file as a plant's office would: a title, true dates, times and numbers. */
  private static void fill(XSSFWorkbook workbook, XSSFSheet sheet, List<CSVRecord> rows) {
    CellStyle day = workbook.createCellStyle();
    day.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
    CellStyle time = workbook.createCellStyle();
    time.setDataFormat(workbook.createDataFormat().getFormat("h:mm"));
    sheet.createRow(0).createCell(0).setCellValue("Deliveries of the month");
    for (int i = 0; i < rows.size(); i++) {
      Row row = sheet.createRow(2 + i);
      for (int column = 0; column < rows.get(i).size(); column++) {
        put(row.createCell(column), rows.get(i).get(column), day, time);
      }
    }
  }

  private static void put(Cell cell, String text, CellStyle day, CellStyle time) {
    if (text.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")) {
      cell.setCellValue(LocalDate.parse(text));
      cell.setCellStyle(day);
    } else if (text.matches("[0-9]+/[0-9]+/[0-9]{4}")) {
      String[] parts = text.split("/", -1);
      cell.setCellValue(
          LocalDate.of(
              Integer.parseInt(parts[2]), Integer.parseInt(parts[0]), Integer.parseInt(parts[1])));
      cell.setCellStyle(day);
    } else if (text.matches("[0-9]{1,2}:[0-9]{2}")) {
      String[] parts = text.split(":", -1);
      LocalTime at = LocalTime.of(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
      cell.setCellValue(at.toSecondOfDay() / 86_400.0);
      cell.setCellStyle(time);
    } else if (text.matches("-?[0-9]+([.][0-9]+)?")) {
      cell.setCellValue(Double.parseDouble(text));
    } else if (!text.isEmpty()) {
      cell.setCellValue(text);
    }
  }

  private Path save(XSSFWorkbook workbook, String name) throws IOException {
    Path file = folder.resolve(name);
    try (var out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
    return file;
  }

  @Test
  void ticketsInOneWorkbookGiveTheSameAsInFiles() throws IOException {
    assertEquals(0, reconcile(order, tickets()), err);
    List<List<String>> before = found();
    Path month;
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      for (Path file : tickets()) {
        String name = file.getFileName().toString().replace(".csv", "");
        fill(workbook, workbook.createSheet(name), rows(file));
      }
      workbook.createSheet("Notes").createRow(0).createCell(0).setCellValue("nothing to match");
      month = save(workbook, "month.xlsx");
    }
    assertEquals(0, reconcile(order, List.of(month)), err);
    assertEquals(before, found());
  }

  @Test
  void anUnreadableCellOfAWorkbookIsToldWithSheetAndCell() throws IOException {
    Path month;
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFSheet sheet = workbook.createSheet("April");
      String[][] rows = {
        {"Ticket", "Supplier", "Job", "Material", "Quantity"},
        {"1", "Anvil and Oak Supply", "BARN", "sand bag", "2"},
        {"2", "Anvil and Oak Supply", "BARN", "sand bag", "many"}
      };
      for (int i = 0; i < rows.length; i++) {
        Row row = sheet.createRow(i);
        for (int column = 0; column < rows[i].length; column++) {
          row.createCell(column).setCellValue(rows[i][column]);
        }
      }
      month = save(workbook, "month.xlsx");
    }
    List<Path> files = new ArrayList<>(tickets());
    files.add(month);
    assertEquals(3, reconcile(order, files));
    assertTrue(
        err.contains("month.xlsx April!E3: found many; expected a number (row left out)"), err);
    assertEquals(6, sheet("Findings").size(), "the planted five, and the readable sand bags");
  }

  /** The plant at Sallow Vale with its own headings and dates, day before month. */
  private Path odd() throws IOException {
    List<String> lines =
        new ArrayList<>(Files.readAllLines(Path.of("demo-data/tickets/sallow-vale.csv")));
    lines.set(0, String.join(",", ODD.stream().map(pair -> pair.get(1)).toList()));
    for (int i = 1; i < lines.size(); i++) {
      lines.set(i, lines.get(i).replaceFirst("([0-9]{4})-([0-9]{2})-([0-9]{2})", "$3/$2/$1"));
    }
    return Files.write(folder.resolve("odd.csv"), lines);
  }

  private List<Path> withOdd() throws IOException {
    List<Path> files = new ArrayList<>(tickets());
    files.removeIf(file -> file.endsWith("sallow-vale.csv"));
    files.add(odd());
    return files;
  }

  private static void explain(XSSFSheet sheet) {
    Row headings = sheet.createRow(0);
    headings.createCell(0).setCellValue("Ours");
    headings.createCell(1).setCellValue("Theirs");
    headings.createCell(2).setCellValue("File");
    for (int i = 0; i < ODD.size(); i++) {
      Row row = sheet.createRow(i + 1);
      row.createCell(0).setCellValue(ODD.get(i).get(0));
      row.createCell(1).setCellValue(ODD.get(i).get(1));
      row.createCell(2).setCellValue("odd.csv");
    }
  }

  @Test
  void aSheetTicketColumnsOfTheOrderExplainsAPlantsHeadings() throws IOException {
    assertEquals(0, reconcile(order, tickets()), err);
    List<List<String>> before = found();
    assertEquals(3, reconcile(order, withOdd()), "no heading is known");
    Path explained;
    try (var in = Files.newInputStream(order);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      explain(workbook.createSheet("Ticket columns"));
      explained = save(workbook, "explained.xlsx");
    }
    assertEquals(0, reconcile(explained, withOdd()), err);
    assertEquals(before, found());
    assertEquals("", err);
  }

  @Test
  void aSheetTicketColumnsOfAColumnsWorkbookExplainsThem() throws IOException {
    assertEquals(0, reconcile(order, tickets()), err);
    List<List<String>> before = found();
    Path columns;
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      workbook.createSheet("Read me").createRow(0).createCell(0).setCellValue("What plants print");
      explain(workbook.createSheet("Ticket columns"));
      columns = save(workbook, "columns.xlsx");
    }
    assertEquals(0, reconcile(order, withOdd(), "--columns", columns), err);
    assertEquals(before, found());
  }
}
