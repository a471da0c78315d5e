package org.pourbook.book.in;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.book.InputSheet;
import org.pourbook.desk.Batch;
import org.pourbook.desk.OrderBook;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.job.Job;
import org.pourbook.measure.Greatest;
import org.pourbook.measure.Money;
import org.pourbook.measure.NumberText;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.ticket.Ordered;

/** Reads an order workbook as the office left it, in whatever program it was saved. */
public final class OrderReader {

  static final String MATERIALS = "Materials";
  private static final List<String> AMOUNTS =
      List.of("Net", "Packs", "Pack holds", "Unit price", "Amount", "Amount in all");
  private static final Set<String> HEADINGS = Set.of("Job", "Material", "Packs", "Pack holds");

  /** The sheets that an order workbook is written with; others are the office's own. */
  private static final List<String> KNOWN =
      List.of(
          InputSheet.READ_FIRST,
          "Summary",
          "Problems",
          "Cautions",
          "Checks",
          MATERIALS,
          "Orders",
          "Order totals",
          "Order pages",
          "Ready list",
          "Loads",
          "Pour plan",
          "Cutting",
          "Bolt layout",
          "Cut list",
          "Runs",
          "Offcuts",
          "Bar list",
          "Bolts",
          "Joints",
          "Takeoff",
          "Cut proof",
          "Rules",
          "Basis",
          "Plans",
          "Changes found",
          TicketColumns.SHEET);

  /** Sheets of which an order workbook or a supplement that this version wrote has one. */
  private static final List<String> NEWER = List.of("Checks", "Changes found");

  private final List<Problem> problems = new ArrayList<>();
  private final Map<Key, Draft> drafts = new LinkedHashMap<>();

  private OrderReader() {}

  private record Key(String job, MaterialKey material) {}

  private record Draft(
      String job, MaterialKey key, String unit, List<Double> net, List<Ordered.Item> items) {}

  /**
   * Returns the order with the input that it was made from.
   *
   * @throws UnreadableFile if the file cannot be read, or is no order workbook
   */
  public static Checked<OrderBook> read(Path path) throws UnreadableFile {
    OrderReader reader = new OrderReader();
    RawBook book =
        InputFiles.read(
            path,
            (name, all) ->
                HeadedRows.isNamed(name, MATERIALS)
                    || Layouts.isReadFirst(name)
                    || HeadedRows.isNamed(name, OrdersBeside.SHEET) && !isSupplement(all));
    if (!InputBook.isOrderWorkbook(book.names())
        || book.sheets().stream().noneMatch(sheet -> HeadedRows.isNamed(sheet.name(), MATERIALS))) {
      throw new UnreadableFile(
          path + " is no order workbook: it has no sheets Given Jobs and Materials");
    }
    Checked<Batch> batch = JobsReader.read(path, Optional.empty());
    batch.problems().stream().filter(Problem::refused).forEach(reader.problems::add);
    reader.noteOthers(book);
    reader.noteOlder(book);
    HeadedRows materials = HeadedRows.of(book, MATERIALS, HEADINGS);
    if (materials.rows().isEmpty()) {
      throw new UnreadableFile(path + " has a sheet Materials without its headings or rows");
    }
    materials.rows().forEach(reader::add);
    reader.problems.addAll(
        OrdersBeside.notes(
            HeadedRows.of(book, OrdersBeside.SHEET, OrdersBeside.HEADINGS), materials));
    return new Checked<>(
        new OrderBook(batch.value(), reader.ordered(batch.value().jobs())), reader.problems);
  }

  /** A supplement's Orders hold what is ordered besides, its Materials what is ordered in all. */
  private static boolean isSupplement(List<String> sheets) {
    return sheets.stream().anyMatch(name -> HeadedRows.isNamed(name, "Changes found"));
  }

  /** Returns whether a place is on a sheet of what was ordered. */
  static boolean isOfMaterials(Place place) {
    String sheet = place.sheet().replaceFirst("(?i)\\.csv$", "");
    return HeadedRows.isNamed(sheet, MATERIALS);
  }

  /** Notes an order workbook of another version; one without Read first is known by its sheets. */
  private void noteOlder(RawBook book) {
    if (book.sheets().stream().anyMatch(sheet -> Layouts.isReadFirst(sheet.name()))) {
      Layouts.note(book).ifPresent(problems::add);
      return;
    }
    if (NEWER.stream()
        .noneMatch(sheet -> book.names().stream().anyMatch(n -> HeadedRows.isNamed(n, sheet)))) {
      problems.add(
          new Problem(
              Place.ofSheet(NEWER.get(0)),
              "",
              "an order workbook of an older version: it has no sheet " + NEWER.get(0),
              "one that this version wrote; it is read by its headings all the same",
              Effect.NOTE));
    }
  }

  private void noteOthers(RawBook book) {
    for (String name : book.names()) {
      boolean given =
          InputSheet.named(name.replaceFirst("^(?i)" + InputSheet.GIVEN, "")).isPresent();
      if (!given && KNOWN.stream().noneMatch(known -> HeadedRows.isNamed(name, known))) {
        problems.add(
            new Problem(
                Place.ofSheet(name),
                "",
                "sheet " + name,
                "a sheet of an order workbook; this one is not read",
                Effect.NOTE));
      }
    }
  }

  private void add(HeadedRows.Row row) {
    String job = row.text("Job");
    MaterialKey key = new MaterialKey(row.text("Material"), row.text("Size"));
    if (job.isEmpty() || key.material().isEmpty()) {
      return;
    }
    Optional<BigDecimal> packs = number(row, "Packs");
    Optional<BigDecimal> holds = number(row, "Pack holds");
    if (packs.isEmpty() || holds.isEmpty()) {
      refuse(row, packs.isEmpty() ? "Packs" : "Pack holds");
      return;
    }
    if (isBeyond(row, packs.get())) {
      return;
    }
    Draft draft =
        drafts.computeIfAbsent(
            new Key(job, key.normal()),
            k -> new Draft(job, key, ownUnit(row), new ArrayList<>(), new ArrayList<>()));
    number(row, "Net").map(BigDecimal::doubleValue).ifPresent(draft.net()::add);
    draft
        .items()
        .add(
            new Ordered.Item(
                row.text("Supplier"),
                row.text("Item"),
                orderUnit(row),
                holds.get().doubleValue(),
                packs.get(),
                number(row, "Unit price"),
                number(row, "Unit price").flatMap(p -> amount(row)).map(Money::rounded)));
  }

  /** Reports a row that comes to more than any that an estimate writes. */
  private boolean isBeyond(HeadedRows.Row row, BigDecimal packs) {
    Optional<String> beyond =
        AMOUNTS.stream().filter(heading -> TicketCells.isBeyond(row.cell(heading))).findFirst();
    BigDecimal price = number(row, "Unit price").orElse(BigDecimal.ZERO);
    boolean together = packs.multiply(price).abs().compareTo(Greatest.LINE) > 0;
    String most = NumberText.text(Greatest.LINE);
    beyond.ifPresent(heading -> refuse(row, heading, "a number, at most " + most));
    if (beyond.isEmpty() && together) {
      refuse(row, "Unit price", "a price that comes to at most " + most + " with the packs");
    }
    return beyond.isPresent() || together;
  }

  /** A supplement has order units under Unit, and what is ordered in all beside what is besides. */
  private static String ownUnit(HeadedRows.Row row) {
    String own = row.text("Own unit");
    return own.isEmpty() ? row.text("Unit") : own;
  }

  private static String orderUnit(HeadedRows.Row row) {
    String unit = row.text("Order unit");
    return unit.isEmpty() ? row.text("Unit") : unit;
  }

  private static Optional<BigDecimal> amount(HeadedRows.Row row) {
    return number(row, "Amount in all").or(() -> number(row, "Amount"));
  }

  private void refuse(HeadedRows.Row row, String heading) {
    String calculated = ": open the workbook, let it calculate, save it";
    refuse(row, heading, "a number in " + heading + calculated);
  }

  private void refuse(HeadedRows.Row row, String heading, String expected) {
    problems.add(
        new Problem(
            row.place(heading),
            row.text("Job"),
            CellWords.found(row.cell(heading)),
            expected,
            Effect.ROW_LEFT_OUT));
  }

  private static Optional<BigDecimal> number(HeadedRows.Row row, String heading) {
    GivenCell cell = row.cell(heading);
    return TicketCells.number(cell);
  }

  private List<Ordered> ordered(List<Job> jobs) {
    Map<String, String> deliverTo = new LinkedHashMap<>();
    jobs.forEach(job -> deliverTo.put(job.code(), job.deliverTo().orElse(job.code())));
    return drafts.values().stream()
        .map(
            draft ->
                new Ordered(
                    draft.job(),
                    deliverTo.getOrDefault(draft.job(), draft.job()),
                    draft.key(),
                    draft.unit(),
                    draft.net().stream().mapToDouble(Double::doubleValue).sum(),
                    draft.items()))
        .toList();
  }
}
