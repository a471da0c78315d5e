package org.pourbook.book.in;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pourbook.book.Heading;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.Table.HeadedColumn;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.desk.Batch.InputFile;
import org.pourbook.job.GivenSheet;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.job.GivenSheet.GivenRow;
import org.pourbook.job.Setting;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;

/**
 * Waste allowances that were learnt from tickets, as rows of Practice for every job.
 *
 * @param rows those of the settings that can be learnt
 */
record LearntPractice(List<TableRow> rows, List<InputFile> files) {

  private static final Set<String> LEARNT =
      Set.of(
          Heading.key(Setting.WASTE_ALLOWANCE.label()),
          Heading.key(Setting.WASTE_ALLOWANCE_PIER.label()));

  LearntPractice {
    rows = List.copyOf(rows);
    files = List.copyOf(files);
  }

  /**
   * Returns the rows of a file, its first sheet; others than those learnt are problems.
   *
   * @throws UnreadableFile if the file cannot be read or holds no such table
   */
  static LearntPractice read(Path path, List<Problem> problems) throws UnreadableFile {
    RawBook book = InputFiles.read(path, (name, all) -> name.equals(all.get(0)));
    Optional<Table> table =
        book.sheets().isEmpty()
            ? Optional.empty()
            : TableReader.read(InputSheet.PRACTICE, book.sheets().get(0), false, new ArrayList<>());
    if (table.isEmpty()) {
      throw new UnreadableFile(path + " has no headings Setting and Value");
    }
    List<TableRow> rows = new ArrayList<>();
    for (TableRow row : table.get().rows()) {
      String job = CellWords.of(row.cell("Job"));
      if (LEARNT.contains(setting(row)) && job.isEmpty()) {
        rows.add(row);
      } else {
        problems.add(
            new Problem(
                row.place("Setting"),
                job,
                CellWords.found(row.cell("Setting")) + (job.isEmpty() ? "" : " of a job"),
                Setting.WASTE_ALLOWANCE.label()
                    + " or "
                    + Setting.WASTE_ALLOWANCE_PIER.label()
                    + " for every job",
                Effect.ROW_LEFT_OUT));
      }
    }
    return new LearntPractice(rows, book.files());
  }

  private static String setting(TableRow row) {
    return Heading.key(CellWords.of(row.cell("Setting")));
  }

  /** Returns the rows whose setting none of the workbook's own rows for every job has. */
  List<TableRow> rowsBeside(List<TableRow> own) {
    Set<String> settings =
        own.stream().map(LearntPractice::setting).collect(Collectors.toUnmodifiableSet());
    return rows.stream().filter(row -> !settings.contains(setting(row))).toList();
  }

  /** Adds the rows that hold to the input as read, so that later commands see them too. */
  void addTo(List<GivenSheet> given, Optional<Table> practice) {
    List<TableRow> beside = rowsBeside(practice.map(PracticeRows::withoutJob).orElse(List.of()));
    String name = InputSheet.PRACTICE.label();
    List<String> headings =
        practice
            .map(table -> table.headed().stream().map(HeadedColumn::heading).toList())
            .orElse(List.of("Job", "Setting", "Value", "Notes"));
    List<GivenRow> all = new ArrayList<>();
    given.stream().filter(sheet -> sheet.name().equals(name)).forEach(s -> all.addAll(s.rows()));
    beside.forEach(row -> all.add(given(row, headings)));
    GivenSheet whole = new GivenSheet(name, headings, all);
    if (given.stream().anyMatch(sheet -> sheet.name().equals(name))) {
      given.replaceAll(sheet -> sheet.name().equals(name) ? whole : sheet);
    } else if (!beside.isEmpty()) {
      given.add(whole);
    }
  }

  private static GivenRow given(TableRow row, List<String> headings) {
    List<GivenCell> cells = new ArrayList<>();
    for (String heading : headings) {
      cells.add(InputSheet.PRACTICE.column(heading).map(row::cell).orElse(RawRow.BLANK));
    }
    return new GivenRow(row.fromSheet(), row.fromRow() + 1, cells);
  }
}
