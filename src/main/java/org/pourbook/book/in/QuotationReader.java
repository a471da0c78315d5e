package org.pourbook.book.in;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.pourbook.book.Heading;
import org.pourbook.buy.Quotation;
import org.pourbook.buy.QuoteLine.Standing;
import org.pourbook.buy.Supplier;
import org.pourbook.desk.Batch.InputFile;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.job.Setting;
import org.pourbook.job.SettingText;
import org.pourbook.measure.Greatest;
import org.pourbook.measure.Money;
import org.pourbook.measure.NumberText;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;
import org.pourbook.takeoff.MaterialKey;

/** Reads a quotation as it came back, in whatever program it was saved. */
public final class QuotationReader {

  private static final String QUOTATION = "Quotation";
  private static final List<String> AMOUNTS = List.of("Asked", "Packs", "Amount", "Truck fees");
  private static final String TERMS = "Terms";
  private static final Set<String> LINE_HEADINGS = Set.of("Job", "Material", "Packs", "Amount");
  private static final Set<String> TERMS_HEADINGS = Set.of("Supplier", "Request");

  private static final String BASIS = "Basis";
  private static final Set<String> BASIS_HEADINGS = Set.of("Job", "Setting", "Value");

  private final Path path;
  private final List<Problem> problems = new ArrayList<>();

  private QuotationReader(Path path) {
    this.path = path;
  }

  /** A quotation and the file that it was read from. */
  public record Read(Quotation quotation, List<InputFile> files) {
    public Read {
      files = List.copyOf(files);
    }
  }

  /**
   * Returns a quotation; a row whose figures cannot be read counts as not offered.
   *
   * @throws UnreadableFile if the file cannot be read, is no quotation, or its terms are unreadable
   */
  public static Checked<Read> read(Path path) throws UnreadableFile {
    QuotationReader reader = new QuotationReader(path);
    RawBook book =
        InputFiles.read(
            path,
            (name, all) ->
                isNamed(name, QUOTATION) || isNamed(name, TERMS) || isNamed(name, BASIS));
    List<HeadedRows.Row> terms = table(HeadedRows.of(book, TERMS, TERMS_HEADINGS));
    List<HeadedRows.Row> lines = table(HeadedRows.of(book, QUOTATION, LINE_HEADINGS));
    if (terms.isEmpty() || lines.isEmpty()) {
      throw new UnreadableFile(
          path + " is no quotation: it has no sheets Quotation and Terms with their headings");
    }
    book.sheets().stream()
        .filter(sheet -> isNamed(sheet.name(), BASIS))
        .findFirst()
        .flatMap(Layouts::note)
        .ifPresent(reader.problems::add);
    Quotation quotation = reader.quotation(terms.get(0), anotherStop(book), lines);
    return new Checked<>(new Read(quotation, book.files()), reader.problems);
  }

  private static boolean isNamed(String name, String sheet) {
    return Heading.key(name).equals(Heading.key(sheet));
  }

  /** Returns the rows down to the first empty one. */
  private static List<HeadedRows.Row> table(HeadedRows all) {
    List<HeadedRows.Row> rows = new ArrayList<>();
    for (HeadedRows.Row row : all.rows()) {
      boolean gap =
          !rows.isEmpty() && row.raw().index() != rows.get(rows.size() - 1).raw().index() + 1;
      if (gap || row.raw().isBlank()) {
        break;
      }
      rows.add(row);
    }
    return rows;
  }

  /** Returns what a stop costs the builder, by job, as the quotation's Basis keeps it. */
  private static Map<String, Money> anotherStop(RawBook book) {
    Map<String, Money> costs = new HashMap<>();
    for (HeadedRows.Row row : HeadedRows.of(book, BASIS, BASIS_HEADINGS).rows()) {
      if (row.text("Setting").equals(Setting.COST_OF_ANOTHER_STOP.label())) {
        number(row.cell("Value"))
            .filter(cost -> cost.abs().compareTo(Greatest.MONEY) <= 0)
            .ifPresent(cost -> costs.put(row.text("Job"), Money.rounded(cost)));
      }
    }
    return costs;
  }

  private Quotation quotation(
      HeadedRows.Row terms, Map<String, Money> anotherStop, List<HeadedRows.Row> lines)
      throws UnreadableFile {
    String name = terms.text("Supplier");
    String request = terms.text("Request");
    if (name.isEmpty() || request.isEmpty()) {
      throw unreadable(terms, name.isEmpty() ? "Supplier" : "Request", "a text");
    }
    Optional<BigDecimal> tax = given(terms, "Tax %");
    Supplier supplier =
        Supplier.quoting(
            name,
            given(terms, "Delivery fee").map(Money::rounded),
            given(terms, "Free from").map(Money::rounded),
            given(terms, "Minimum order").map(Money::rounded),
            terms.place("Supplier"));
    return new Quotation(
        supplier,
        TicketCells.date(terms.cell("Valid until"), ""),
        request,
        terms.text("Currency"),
        anotherStop,
        lines.stream()
            .filter(row -> !row.text("Material").isEmpty())
            .map(row -> row(row, tax.orElse(BigDecimal.ZERO)))
            .toList());
  }

  private Optional<BigDecimal> given(HeadedRows.Row terms, String heading) throws UnreadableFile {
    GivenCell cell = terms.cell(heading);
    Optional<BigDecimal> number = number(cell);
    if (number.isEmpty() && !(cell instanceof GivenCell.Blank)) {
      throw unreadable(terms, heading, "a number");
    }
    if (number.filter(fee -> fee.abs().compareTo(Greatest.MONEY) > 0).isPresent()) {
      throw unreadable(terms, heading, "at most " + NumberText.text(Greatest.MONEY));
    }
    return number;
  }

  private UnreadableFile unreadable(HeadedRows.Row row, String heading, String expected) {
    return new UnreadableFile(
        path
            + ": "
            + row.place(heading)
            + ": found "
            + CellWords.found(row.cell(heading))
            + "; expected "
            + expected
            + " in "
            + heading);
  }

  private Quotation.Row row(HeadedRows.Row row, BigDecimal usualTax) {
    String standing = row.text("Standing");
    boolean none = is(standing, Standing.NOT_STOCKED) || is(standing, Standing.RAN_OUT);
    Optional<BigDecimal> packs = number(row.cell("Packs"));
    Optional<BigDecimal> amount = number(row.cell("Amount"));
    boolean needless = row.cell("Packs") instanceof GivenCell.Blank;
    boolean unreadable = !none && !needless && (packs.isEmpty() || amount.isEmpty());
    if (unreadable) {
      String heading = packs.isEmpty() ? "Packs" : "Amount";
      String calculated = ": open the quotation, let it calculate, save it";
      refuse(row, heading, "a number in " + heading + calculated);
    }
    Optional<String> beyond =
        AMOUNTS.stream().filter(heading -> TicketCells.isBeyond(row.cell(heading))).findFirst();
    beyond.ifPresent(
        heading -> refuse(row, heading, "a number, at most " + NumberText.text(Greatest.LINE)));
    boolean missing = none || unreadable || beyond.isPresent();
    String job = row.text("Job");
    Optional<BigDecimal> asked = number(row.cell("Asked"));
    String deliverTo = row.text("Deliver to");
    return new Quotation.Row(
        job,
        new MaterialKey(row.text("Material"), row.text("Size")),
        asked.map(number -> OptionalDouble.of(number.doubleValue())).orElse(OptionalDouble.empty()),
        row.text("Unit"),
        row.text("Item"),
        missing ? BigDecimal.ZERO : packs.orElse(BigDecimal.ZERO),
        row.text("Order unit"),
        missing ? Money.ZERO : amount.map(Money::rounded).orElse(Money.ZERO),
        isYes(row, "Taxable"),
        number(row.cell("Tax %")).orElse(usualTax),
        number(row.cell("Truck fees"))
            .filter(fees -> !missing)
            .map(Money::rounded)
            .orElse(Money.ZERO),
        deliverTo.isEmpty() ? job : deliverTo,
        TicketCells.date(row.cell("Needed by"), ""),
        isYes(row, "Brought"),
        missing);
  }

  /** Returns an answer; yes where it is left blank. */
  private static boolean isYes(HeadedRows.Row row, String heading) {
    return SettingText.yesNo(row.text(heading)).orElse(true);
  }

  private static boolean is(String text, Standing standing) {
    return Heading.key(text).equals(Heading.key(standing.label()));
  }

  private void refuse(HeadedRows.Row row, String heading, String expected) {
    Place in = row.place(heading);
    problems.add(
        new Problem(
            new Place(InputFiles.name(path) + " " + in.sheet(), in.row(), in.column()),
            row.text("Job"),
            CellWords.found(row.cell(heading)),
            expected,
            Effect.ROW_LEFT_OUT));
  }

  /** Returns a number; of a cell formatted as a percentage 5 for 5 %. */
  private static Optional<BigDecimal> number(GivenCell cell) {
    return TicketCells.number(
        cell instanceof GivenCell.Number number
            ? new GivenCell.Number(number.number(), false)
            : cell);
  }
}
