package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import org.pourbook.ticket.Ticket;

/** Files of tickets as plants send them. All names and figures are invented. */
class TicketFilesTest {

  private static final String HEADINGS = "Ticket,Supplier,Job,Material,Quantity\n";

  @TempDir Path folder;
  private Path order = Path.of("");

  @BeforeEach
  void anOrderWithoutTicketColumns() throws IOException {
    order = csv("order.csv", "Job\nA\n");
  }

  private Path csv(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private Checked<TicketFiles.Tickets> read(Path... files) throws IOException {
    return TicketFiles.read(List.of(files), order, Optional.empty());
  }

  private static List<String> found(Checked<TicketFiles.Tickets> read) {
    return read.problems().stream().map(p -> p.place().cell() + " " + p.found()).toList();
  }

  /** A workbook of sheets whose rows hold text, numbers, dates and full times. */
  private Path workbook(String name, Object... sheets) throws IOException {
    Path file = folder.resolve(name);
    try (Workbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      CellStyle moment = book.createCellStyle();
      moment.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd hh:mm"));
      for (int i = 0; i < sheets.length; i += 2) {
        Sheet sheet = book.createSheet((String) sheets[i]);
        for (Object[] cells : (Object[][]) sheets[i + 1]) {
          Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
          for (Object value : cells) {
            put(row.createCell(Math.max(0, row.getLastCellNum())), value, moment);
          }
        }
      }
      book.write(out);
    }
    return file;
  }

  private static void put(Cell cell, Object value, CellStyle moment) {
    if (value instanceof Double number) {
      cell.setCellValue(number);
    } else if (value instanceof LocalDateTime time) {
      cell.setCellStyle(moment);
      cell.setCellValue(time);
    } else {
      cell.setCellValue((String) value);
    }
  }

  private static Object[] row(Object... cells) {
    return cells;
  }

  @Test
  void aWorkbookGivesTicketsOfAllItsSheets() throws IOException {
    Path file =
        workbook(
            "month.xlsx",
            "April",
            new Object[][] {
              row("Invented plant, tickets of April"),
              row("Docket no", "Plant", "Order job", "Mix", "Qty", "Load time", "Unload end"),
              row(
                  8801.0,
                  "Plant",
                  "A",
                  "3000 psi",
                  8.5,
                  LocalDateTime.of(2027, 4, 6, 23, 10),
                  LocalDateTime.of(2027, 4, 7, 0, 0))
            },
            "May",
            new Object[][] {
              row("Ticket", "Supplier", "Job", "Quantity"), row("8802", "Plant", "A", 2.0)
            },
            "Remarks",
            new Object[][] {row("Call before noon")});
    Checked<TicketFiles.Tickets> read = read(file);
    List<Ticket> tickets = read.value().tickets();
    assertEquals(List.of(" no headings of tickets"), found(read));
    assertEquals(List.of("8801", "8802"), tickets.stream().map(Ticket::ticket).toList());
    assertEquals("concrete", tickets.get(0).key().material());
    assertEquals(Optional.of(LocalTime.MIDNIGHT), tickets.get(0).discharged());
    assertEquals(Optional.of(50), tickets.get(0).age());
    assertEquals("April", tickets.get(0).place().sheet().replaceFirst("^month.xlsx ", ""));
  }

  @Test
  void aSheetThatLacksAColumnIsAskedForItThoughAnotherHasAll() throws IOException {
    Path file =
        workbook(
            "half.xlsx",
            "April",
            new Object[][] {
              row("Ticket", "Supplier", "Job", "Quantity"), row("8801", "Plant", "A", 2.0)
            },
            "May",
            new Object[][] {row("Ticket", "Job", "Quantity"), row("8802", "A", 2.0)});
    Checked<TicketFiles.Tickets> read = read(file);
    assertEquals(List.of("A1 no column for Supplier"), found(read));
    assertEquals(1, read.value().tickets().size());
  }

  @Test
  void theColumnsOfAWorkbookHoldForItAloneInAnyOrderOfFiles() throws IOException {
    Path own =
        workbook(
            "own.xlsx",
            "Tickets",
            new Object[][] {row("Chit", "Job", "Quantity"), row("1", "A", 2.0)},
            "Ticket columns",
            new Object[][] {
              row("Ours", "Theirs", "Always"), row("Ticket", "Chit", ""), row("Supplier", "", "Own")
            });
    Path other = csv("other.csv", "Chit,Job,Quantity\n2,A,3\n");
    for (List<Path> files : List.of(List.of(own, other), List.of(other, own))) {
      Checked<TicketFiles.Tickets> read = TicketFiles.read(files, order, Optional.empty());
      assertEquals(List.of("Own"), read.value().tickets().stream().map(Ticket::supplier).toList());
      assertEquals(List.of("A1 no column for Ticket, Supplier"), found(read));
    }
  }

  @Test
  void theColumnsOfTheOrderWorkbookAndOfAWorkbookOfTheirOwnHoldForEveryFile() throws IOException {
    Object[][] table = {
      row("What the plants' headings mean"),
      row("Ours", "Theirs", "Always", "File"),
      row("Ticket", "Chit", "", ""),
      row("Date (d/m/y)", "When", "", ""),
      row("Supplier", "", "Own", "a.csv"),
      row("Colour", "Hue", "", "")
    };
    Path file = csv("a.csv", "Chit,When,Job,Quantity\n2,4/6/2027,A,3\n");
    order = workbook("order.xlsx", "Given Jobs", new Object[0][], "Ticket columns", table);
    Path columns = workbook("columns.xlsx", "Anything", table);
    Checked<TicketFiles.Tickets> byOrder = read(file);
    order = csv("order.csv", "Job\nA\n");
    Checked<TicketFiles.Tickets> byFile =
        TicketFiles.read(List.of(file), order, Optional.of(columns));
    for (Checked<TicketFiles.Tickets> read : List.of(byOrder, byFile)) {
      assertEquals(List.of("A6 Colour"), found(read));
      Ticket ticket = read.value().tickets().get(0);
      assertEquals("Own", ticket.supplier());
      assertEquals(Optional.of(LocalDate.of(2027, 6, 4)), ticket.date());
    }
  }

  @Test
  void cellsBetweenSemicolonsOrTabsAreAskedForWithCommas() throws IOException {
    for (String between : List.of(";", "\t")) {
      Path file = csv("cells.csv", (HEADINGS + "1,P,A,concrete,8\n").replace(",", between));
      Checked<TicketFiles.Tickets> read = read(file);
      assertEquals(1, read.problems().size());
      Problem problem = read.problems().get(0);
      assertTrue(
          problem.found().contains(between.equals(";") ? "semicolons" : "tabs"), problem.found());
      assertTrue(problem.expected().contains("commas"), problem.expected());
      assertTrue(problem.refused());
    }
  }

  @Test
  void aByteOrderMarkQuotedLinesAndBlankLinesAreReadOver() throws IOException {
    Path file =
        csv(
            "marked.csv",
            "\ufeff" + HEADINGS + "\n1,\"P\nYard 2\",A,\"concrete\",\"1,008\"\r\n\n2,P,A,=x,8\n");
    Checked<TicketFiles.Tickets> read = read(file);
    assertEquals(List.of(), found(read));
    assertEquals(
        List.of(1008.0, 8.0), read.value().tickets().stream().map(Ticket::quantity).toList());
    assertEquals("P Yard 2", read.value().tickets().get(0).supplier().replace('\n', ' '));
    assertEquals("=x", read.value().tickets().get(1).key().material());
  }

  @Test
  void aDecimalCommaIsNotGuessed() throws IOException {
    Checked<TicketFiles.Tickets> read =
        read(csv("comma.csv", HEADINGS + "1,P,A,concrete,\"8,25\"\n2,P,A,concrete,8.25\n"));
    assertEquals(List.of("E2 8,25"), found(read));
    assertEquals(1, read.value().tickets().size());
  }

  @Test
  void aFileThatIsNotUtf8IsToldAndTheOtherFilesAreRead() throws IOException {
    Path bad = folder.resolve("latin.csv");
    Files.write(
        bad, (HEADINGS + "1,M\u00fchle,A,concrete,8\n").getBytes(StandardCharsets.ISO_8859_1));
    Checked<TicketFiles.Tickets> read = read(bad, csv("good.csv", HEADINGS + "2,P,A,concrete,8\n"));
    assertEquals(1, read.problems().size());
    assertTrue(read.problems().get(0).refused());
    assertEquals(1, read.value().tickets().size());
  }
}
