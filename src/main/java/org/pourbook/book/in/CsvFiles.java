package org.pourbook.book.in;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.pourbook.book.FormulaGuard;
import org.pourbook.desk.Batch.InputFile;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;

/** CSV files: UTF-8, commas, quotes as in RFC 4180; every cell is text. */
final class CsvFiles {

  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(false).get();

  private CsvFiles() {}

  /** Returns the CSV files of a folder that are named after sheets. */
  static RawBook folder(Path folder, RawBook.Choice choice) throws UnreadableFile {
    List<Path> files;
    try (Stream<Path> list = Files.list(folder)) {
      files =
          list.filter(file -> InputFiles.isCsv(file) && Files.isRegularFile(file))
              .sorted(Comparator.comparing(InputFiles::name))
              .toList();
    } catch (IOException e) {
      throw new UnreadableFile(folder + " cannot be read", e);
    }
    if (files.isEmpty()) {
      throw new UnreadableFile(folder + " is a folder without CSV files");
    }
    return files(files, choice);
  }

  /** Returns one CSV file, and the suppliers.csv beside it when that is asked for. */
  static RawBook single(Path file, RawBook.Choice choice) throws UnreadableFile {
    List<Path> files = new ArrayList<>(List.of(file));
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null) {
      try (Stream<Path> list = Files.list(folder)) {
        list.filter(beside -> InputFiles.name(beside).equalsIgnoreCase("suppliers.csv"))
            .filter(beside -> !InputFiles.name(beside).equals(InputFiles.name(file)))
            .sorted()
            .findFirst()
            .ifPresent(files::add);
      } catch (IOException e) {
        throw new UnreadableFile(folder + " cannot be read", e);
      }
    }
    return files(files, choice);
  }

  private static RawBook files(List<Path> files, RawBook.Choice choice) throws UnreadableFile {
    List<String> names = files.stream().map(CsvFiles::sheetName).toList();
    List<RawSheet> sheets = new ArrayList<>();
    List<InputFile> read = new ArrayList<>();
    for (Path file : files) {
      if (choice.reads(sheetName(file), names)) {
        sheets.add(sheet(file));
        read.add(hashed(file));
      }
    }
    return new RawBook(names, sheets, read);
  }

  private static InputFile hashed(Path file) throws UnreadableFile {
    try {
      return InputFiles.hashed(file);
    } catch (IOException e) {
      throw new UnreadableFile(file + " cannot be read", e);
    }
  }

  private static String sheetName(Path file) {
    String name = InputFiles.name(file);
    return name.substring(0, name.length() - ".csv".length());
  }

  private static RawSheet sheet(Path file) throws UnreadableFile {
    List<RawRow> rows = new ArrayList<>();
    try (CsvText text = text(file);
        CSVParser parser = CSVParser.parse(text, FORMAT)) {
      Map<GivenCell, GivenCell> alike = new HashMap<>(); // a season says the same over and over
      int index = 0;
      for (CSVRecord record : parser) {
        text.endRow();
        RawRow row = row(index++, record).sharing(alike);
        if (!row.isBlank()) {
          rows.add(row);
        }
      }
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      throw new UnreadableFile(file + " " + whatIsWrong(e), e);
    }
    return new RawSheet(InputFiles.name(file), sheetName(file), rows);
  }

  private static String whatIsWrong(Exception e) {
    Throwable trouble = e instanceof UncheckedIOException ? e.getCause() : e;
    if (trouble instanceof CsvText.Refused refused) {
      return refused.fault();
    }
    return trouble instanceof CharacterCodingException
        ? "is not UTF-8 text: save it as CSV UTF-8"
        : "is no sound CSV file: a quote is not closed";
  }

  /**
   * Gives a file's rows one after the other, none of them kept. Where the file is no sound CSV, the
   * rows before are given and the rest is a problem.
   *
   * @throws UnreadableFile if the file is missing
   */
  static void stream(Path file, Consumer<RawRow> rows, List<Problem> problems)
      throws UnreadableFile {
    if (Files.notExists(file)) {
      throw UnreadableFile.missing(file);
    }
    int index = 0;
    try (CsvText text = text(file);
        CSVParser parser = CSVParser.parse(text, FORMAT)) {
      for (CSVRecord record : parser) {
        text.endRow();
        RawRow row = row(index, record);
        index++;
        if (!row.isBlank()) {
          rows.accept(row);
        }
      }
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      problems.add(
          new Problem(
              new Place(InputFiles.name(file), index, -1),
              "",
              "no sound CSV from here on",
              "UTF-8 text in which every quote is closed",
              Problem.Effect.ROW_LEFT_OUT));
    }
  }

  private static CsvText text(Path file) throws IOException {
    Reader reader =
        new BufferedReader(
            new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8.newDecoder()));
    reader.mark(1);
    if (reader.read() != '\ufeff') {
      reader.reset();
    }
    return new CsvText(reader);
  }

  private static RawRow row(int index, CSVRecord record) {
    List<GivenCell> cells = new ArrayList<>(record.size());
    record.forEach(value -> cells.add(CellValues.text(FormulaGuard.unguarded(value))));
    return new RawRow(index, cells);
  }
}
