package org.pourbook.book.in;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.PriceBooks.PriceInput;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.buy.PriceBook;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Batch.InputFile;
import org.pourbook.job.GivenSheet;
import org.pourbook.job.Job;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;

/** Reads a jobs workbook, a folder of CSV files, or the input that an order workbook was given. */
public final class JobsReader {

  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, JobDraft> drafts = new LinkedHashMap<>();
  private final InputBook book;
  private Optional<LearntPractice> learnt = Optional.empty();
  private Optional<PriceBook> asker = Optional.empty();

  private JobsReader(RawBook raw, Set<InputSheet> wanted) {
    this.book = new InputBook(raw, wanted, problems);
  }

  /**
   * Returns the sound jobs with the prices, and every problem of the input sorted by its place.
   *
   * @param prices a price book, in place of the sheets Prices and Suppliers of the jobs workbook
   * @throws UnreadableFile if a file cannot be read, or holds no sheet Jobs, Sections or Prices
   */
  public static Checked<Batch> read(Path jobs, Optional<Path> prices) throws UnreadableFile {
    return read(jobs, prices, Optional.empty());
  }

  /**
   * Returns the same, with settings that a file of learnt practice adds.
   *
   * @param practice rows for every job, as {@code reconcile --learned} writes them; the workbook's
   *     own rows win
   */
  public static Checked<Batch> read(Path jobs, Optional<Path> prices, Optional<Path> practice)
      throws UnreadableFile {
    Set<InputSheet> wanted = EnumSet.allOf(InputSheet.class);
    if (prices.isPresent()) {
      wanted.removeAll(PriceBooks.SHEETS);
    }
    JobsReader reader = open(jobs, wanted);
    if (practice.isPresent()) {
      reader.learnt = Optional.of(LearntPractice.read(practice.get(), reader.problems));
    }
    return reader.batch(prices);
  }

  /**
   * Returns the sound jobs with a supplier's list. What is asked does not hang on who is asked: a
   * mix that is not written is the only one of the builder's own price book, where there is one.
   *
   * @throws UnreadableFile if a file cannot be read, or holds no sheet Jobs, Sections or Prices
   */
  public static Checked<Batch> readRequest(Path jobs, Path list) throws UnreadableFile {
    Set<InputSheet> wanted = EnumSet.complementOf(EnumSet.copyOf(PriceBooks.SHEETS));
    JobsReader reader = open(jobs, wanted);
    RawBook raw = InputFiles.read(jobs, InputBook.choice(PriceBooks.SHEETS));
    List<Problem> notOurs = new ArrayList<>();
    PriceBook own = PriceBooks.read(new InputBook(raw, PriceBooks.SHEETS, notOurs), notOurs);
    reader.asker = Optional.of(own).filter(book -> !book.prices().isEmpty());
    return reader.batch(Optional.of(list));
  }

  private static JobsReader open(Path jobs, Set<InputSheet> wanted) throws UnreadableFile {
    JobsReader reader = new JobsReader(InputFiles.read(jobs, InputBook.choice(wanted)), wanted);
    for (InputSheet sheet : InputSheet.values()) {
      if (sheet.isRequired() && !reader.book.has(sheet)) {
        throw new UnreadableFile(jobs + " has no sheet " + sheet.label());
      }
    }
    return reader;
  }

  private Checked<Batch> batch(Optional<Path> prices) throws UnreadableFile {
    List<GivenSheet> given = new ArrayList<>(book.given());
    List<InputFile> files = new ArrayList<>(book.files());
    PriceBook priceBook;
    if (prices.isPresent()) {
      Checked<PriceInput> read = PriceBooks.read(prices.get());
      problems.addAll(read.problems());
      given.addAll(read.value().given());
      files.addAll(read.value().files());
      priceBook = read.value().book();
    } else {
      priceBook = PriceBooks.read(book, problems);
    }
    learnt.ifPresent(
        file -> {
          file.addTo(given, book.table(InputSheet.PRACTICE));
          files.addAll(file.files());
        });
    List<Job> jobs = jobs(asker.orElse(priceBook));
    problems.sort(ProblemOrder.BY_PLACE);
    return new Checked<>(new Batch(jobs, priceBook, given, files), problems);
  }

  private List<Job> jobs(PriceBook prices) {
    List<TableRow> rows = book.table(InputSheet.JOBS).map(Table::rows).orElse(List.of());
    boolean allMetric = !rows.isEmpty() && rows.stream().allMatch(row -> units(row).isMetric());
    for (InputSheet sheet : InputSheet.values()) {
      if (!sheet.isOfPriceBook()) {
        book.table(sheet).ifPresent(table -> TableReader.checkHeadings(table, allMetric, problems));
      }
    }
    rows.forEach(this::draft);
    for (InputSheet sheet : InputSheet.values()) {
      if (!sheet.isOfPriceBook() && sheet != InputSheet.JOBS) {
        leaveOutBroken(sheet);
        book.table(sheet).ifPresent(this::assign);
      }
    }
    List<TableRow> forAll =
        new ArrayList<>(
            book.table(InputSheet.PRACTICE).map(PracticeRows::withoutJob).orElse(List.of()));
    learnt.ifPresent(file -> forAll.addAll(file.rowsBeside(forAll)));
    PracticeRows practices =
        new PracticeRows(forAll, allMetric ? UnitSystem.M : UnitSystem.FT_IN, prices, problems);
    JobBuilder builder = new JobBuilder(practices, prices);
    List<Job> jobs = new ArrayList<>();
    drafts.values().forEach(draft -> builder.job(draft).ifPresent(jobs::add));
    return jobs;
  }

  /** A sheet whose headings are not found may hold rows of any job. */
  private void leaveOutBroken(InputSheet sheet) {
    if (book.isBroken(sheet)) {
      drafts.values().forEach(JobDraft::leaveOut);
    }
  }

  /** Returns the units of a job's row, those of feet and inches where they cannot be read. */
  private static UnitSystem units(TableRow row) {
    return new Cells(row, UnitSystem.FT_IN, "", Effect.JOB_LEFT_OUT, new ArrayList<>())
        .choice("Units", UnitSystem.values(), UnitSystem::label)
        .orElse(UnitSystem.FT_IN);
  }

  private void draft(TableRow row) {
    String job = CellWords.of(row.cell("Job"));
    Cells cells = new Cells(row, units(row), job, Effect.JOB_LEFT_OUT, problems);
    UnitSystem units =
        cells.choice("Units", UnitSystem.values(), UnitSystem::label).orElse(UnitSystem.FT_IN);
    Optional<String> code = cells.code("Job");
    if (code.isEmpty()) {
      return;
    }
    JobDraft known = drafts.get(code.get());
    if (known == null) {
      drafts.put(code.get(), new JobDraft(code.get(), cells, units, problems));
    } else {
      cells.refuse("Job", "a code that is unique");
      known.leaveOut();
    }
  }

  /** Gives each row of a sheet to its job. */
  private void assign(Table table) {
    boolean everyJob = table.sheet() == InputSheet.PRACTICE;
    for (TableRow row : table.rows()) {
      String code = CellWords.of(row.cell("Job"));
      JobDraft draft = drafts.get(code);
      if (draft != null) {
        draft.add(table.sheet(), row);
      } else if (!(everyJob && code.isEmpty())) {
        problems.add(
            new Problem(
                row.place("Job"),
                "",
                CellWords.found(row.cell("Job")),
                "the code of a job of sheet Jobs",
                Effect.ROW_LEFT_OUT));
      }
    }
  }
}
