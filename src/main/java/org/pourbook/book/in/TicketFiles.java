package org.pourbook.book.in;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.book.Heading;
import org.pourbook.desk.Batch.InputFile;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import org.pourbook.ticket.Ticket;

/** Reads delivery tickets and invoices from CSV files and workbooks. */
public final class TicketFiles {

  private static final String COLUMNS = Heading.key(TicketColumns.SHEET);

  private final List<Problem> problems = new ArrayList<>();
  private final List<Ticket> tickets = new ArrayList<>();
  private final List<InputFile> files = new ArrayList<>();
  private final TicketColumns columns = new TicketColumns(problems);

  private TicketFiles() {}

  /** Tickets as read, and the files they were read from. */
  public record Tickets(List<Ticket> tickets, List<InputFile> files) {
    public Tickets {
      tickets = List.copyOf(tickets);
      files = List.copyOf(files);
    }
  }

  /**
   * Returns every row that can be used, file by file.
   *
   * @param order an order workbook, whose sheet Ticket columns counts too
   * @param columns a file that says what headings mean
   * @throws UnreadableFile if a file is missing or nothing that can be read
   */
  public static Checked<Tickets> read(List<Path> files, Path order, Optional<Path> columns)
      throws UnreadableFile {
    TicketFiles reader = new TicketFiles();
    if (columns.isPresent()) {
      RawBook book = InputFiles.read(columns.get(), (name, all) -> true);
      boolean named = book.sheets().stream().anyMatch(sheet -> isColumns(sheet.name()));
      book.sheets().stream()
          .filter(sheet -> !named || isColumns(sheet.name()))
          .limit(1)
          .forEach(sheet -> reader.columns.add(sheet, ""));
      reader.files.addAll(book.files().subList(0, Math.min(1, book.files().size())));
    }
    InputFiles.read(order, (name, all) -> isColumns(name))
        .sheets()
        .forEach(sheet -> reader.columns.add(sheet, ""));
    for (Path file : files) {
      reader.read(file);
    }
    return new Checked<>(new Tickets(reader.tickets, reader.files), reader.problems);
  }

  private static boolean isColumns(String name) {
    return Heading.key(name).equals(COLUMNS);
  }

  private void read(Path path) throws UnreadableFile {
    if (InputFiles.isCsv(path) && Files.isRegularFile(path)) {
      TicketTable table = table(InputFiles.name(path), InputFiles.name(path));
      int before = problems.size();
      CsvFiles.stream(path, table, problems);
      if (!table.isTable() && problems.size() == before) {
        table.askForHeadings();
      }
      files.add(hashed(path));
    } else {
      workbook(path);
    }
  }

  private static InputFile hashed(Path path) throws UnreadableFile {
    try {
      return InputFiles.hashed(path);
    } catch (IOException e) {
      throw new UnreadableFile(path + " cannot be read", e);
    }
  }

  private void workbook(Path path) throws UnreadableFile {
    RawBook book = InputFiles.read(path, (name, all) -> true);
    files.addAll(book.files());
    book.sheets().stream()
        .filter(sheet -> isColumns(sheet.name()))
        .forEach(sheet -> columns.add(sheet, InputFiles.name(path)));
    List<TicketTable> tables = new ArrayList<>();
    for (RawSheet sheet : book.sheets()) {
      if (!isColumns(sheet.name()) && !sheet.rows().isEmpty()) {
        TicketTable table =
            table(InputFiles.name(path), InputFiles.name(path) + " " + sheet.place());
        sheet.rows().forEach(table);
        tables.add(table);
      }
    }
    boolean some = tables.stream().anyMatch(TicketTable::isTable);
    for (TicketTable table : tables) {
      if (!table.isTable()) {
        if (!some || table.isLike()) {
          table.askForHeadings();
        } else {
          table.noteUnread();
        }
      }
    }
  }

  private TicketTable table(String file, String place) {
    return new TicketTable(place, new TicketHeadings(file, columns), tickets::add, problems);
  }
}
