package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pourbook.buy.CutSheet;
import org.pourbook.buy.OnHand;
import org.pourbook.cut.CutResult;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.UnitSystem;

/** How boards and bars are cut from stock, and how near to the best possible that is. */
final class CutSheets {

  static final String PIECES = "Pieces";
  private static final String STOCK = "Pieces of stock";

  private CutSheets() {}

  /**
   * A pattern of a plan.
   *
   * @param setUp number of the saw's set-up within the plan: the same for the same cuts from the
   *     same stock length, which stand together
   */
  record Row(CutSheet sheet, CutResult.Pattern pattern, int setUp) {
    UnitSystem units() {
      return sheet.units();
    }
  }

  static SheetSpec<Row> cutList(List<CutSheet> sheets, BatchUnits units) {
    List<Row> rows = MadeRows.of(sheets, CutSheets::rows, (sheet, row) -> row);
    List<Column<Row>> columns = new ArrayList<>();
    columns.add(Column.text("Job", 12, row -> String.join(", ", row.sheet().jobs())));
    columns.addAll(units.column(Row::units));
    columns.add(Column.cell("Done", Look.TICK, 6, row -> Cell.BLANK));
    columns.add(Column.text("Material", 13, row -> row.sheet().key().material()));
    columns.add(Column.text("Size", 8, row -> row.sheet().key().size()));
    columns.addAll(
        BatchUnits.lengths(
            units.lengthHeading("Stock length"),
            "Stock length as read",
            Row::units,
            row -> Optional.of(row.pattern().stock().length())));
    columns.add(Column.onScreen(Column.text("From", 12, CutSheets::from)));
    columns.add(Column.count(STOCK, 8, row -> row.pattern().times()));
    columns.add(
        Column.onScreen(
            Column.<Row>of(
                    PIECES,
                    Look.COUNT,
                    7,
                    at ->
                        Cell.formula(
                            at.cell(STOCK) + "*" + ofOne(at.record()), pieces(at.record())))
                .inTotal()));
    columns.add(
        Column.onScreen(
            Column.number(
                units.lengthHeading(PourSheets.WORKED_OUT_FOR),
                Look.NUMBER,
                9,
                row -> BatchUnits.length(lengthOf(row.sheet()), row.units()))));
    columns.add(Column.count("Set-up", 6, Row::setUp));
    columns.add(Column.text("Cuts", 32, CutSheets::cuts));
    columns.add(Column.text("Goes to", 46, CutSheets::goesTo));
    columns.addAll(
        BatchUnits.lengths(
            units.lengthHeading("Offcut"),
            "Offcut as read",
            Row::units,
            row -> Optional.of(row.pattern().offcut())));
    return SheetSpec.landscape(
        "Cut list",
        "How each stock piece is cut; one set-up of the saw after the other. Tick when done. It holds"
            + " for the sizes as the tool read them.",
        columns,
        rows);
  }

  /** Returns the pieces that a row's stock is cut into. */
  static int pieces(Row row) {
    return row.pattern().times() * ofOne(row);
  }

  private static int ofOne(Row row) {
    return row.pattern().cuts().stream().mapToInt(CutResult.Cut::count).sum();
  }

  /** Returns the length of all pieces that a plan was made for. */
  private static Length lengthOf(CutSheet sheet) {
    Length all = Length.ZERO;
    for (CutResult.Pattern pattern : sheet.patterns()) {
      for (CutResult.Cut cut : pattern.cuts()) {
        all = all.plus(cut.length().times((long) pattern.times() * cut.count()));
      }
    }
    return all;
  }

  /** Returns the cuts of one stock piece, longest first: {@code 2 x 13'-7 1/8" + 1 x 4'-0"}. */
  static String cuts(Row row) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    row.pattern().cuts().stream()
        .sorted((one, other) -> other.length().compareTo(one.length()))
        .forEach(cut -> counts.merge(read(cut.length(), row.units()), cut.count(), Integer::sum));
    return counted(counts);
  }

  /** Returns how many there are of each length, in their order. */
  static String counted(Map<String, Integer> counts) {
    return counts.entrySet().stream()
        .map(entry -> entry.getValue() + " x " + entry.getKey())
        .collect(Collectors.joining(" + "));
  }

  private static String from(Row row) {
    return CutSheet.isInHand(row.pattern()) ? "ordered before" : row.pattern().stock().id();
  }

  /** Returns the patterns by set-up, in the order in which the plan has the set-ups first. */
  static List<Row> rows(CutSheet sheet) {
    Map<String, List<CutResult.Pattern>> setUps = new LinkedHashMap<>();
    for (CutResult.Pattern pattern : sheet.patterns()) {
      String cuts = pattern.stock().length() + " " + cuts(new Row(sheet, pattern, 0));
      setUps.computeIfAbsent(cuts, key -> new ArrayList<>()).add(pattern);
    }
    List<Row> rows = new ArrayList<>();
    int setUp = 0;
    for (List<CutResult.Pattern> same : setUps.values()) {
      setUp++;
      for (CutResult.Pattern pattern : same) {
        rows.add(new Row(sheet, pattern, setUp));
      }
    }
    return rows;
  }

  /** Returns what the cuts are for, in their order; with their lengths where these differ. */
  static String goesTo(Row row) {
    Map<String, List<CutResult.Cut>> byLength = new LinkedHashMap<>();
    row.pattern().cuts().stream()
        .sorted((one, other) -> other.length().compareTo(one.length()))
        .forEach(
            cut ->
                byLength
                    .computeIfAbsent(read(cut.length(), row.units()), key -> new ArrayList<>())
                    .add(cut));
    return byLength.entrySet().stream()
        .map(entry -> (byLength.size() == 1 ? "" : entry.getKey() + " ") + places(entry.getValue()))
        .collect(Collectors.joining("; "));
  }

  private static String places(List<CutResult.Cut> cuts) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    cuts.forEach(cut -> counts.merge(cut.goesTo(), cut.count(), Integer::sum));
    return counts.entrySet().stream()
        .map(
            entry ->
                entry.getValue() == 1
                    ? entry.getKey()
                    : entry.getKey() + " (" + entry.getValue() + ")")
        .collect(Collectors.joining(", "));
  }

  /** What lies in the yard afterwards; {@code estimate --offcuts} reads it. */
  static SheetSpec<OnHand> offcuts(List<OnHand> offcuts, BatchUnits units) {
    List<Column<OnHand>> columns = new ArrayList<>();
    columns.add(Column.text("Material", 13, some -> some.key().material()));
    columns.add(Column.text("Size", 8, some -> some.key().size()));
    columns.add(Column.text("Units", 6, some -> some.units().label()));
    columns.addAll(
        BatchUnits.lengths(
            units.lengthHeading("Stock length"),
            "Stock length as read",
            OnHand::units,
            some -> Optional.of(some.length())));
    columns.add(Column.count("Pieces", 8, OnHand::pieces));
    columns.add(Column.text("From", 24, OnHand::from));
    return SheetSpec.portrait(
        "Offcuts",
        "What is left over Keep offcuts, for the yard; the next estimate cuts it first (--offcuts).",
        columns,
        offcuts);
  }

  private static String read(Length length, UnitSystem units) {
    return LengthFormat.of(length, units);
  }

  static SheetSpec<CutSheet> cutProof(List<CutSheet> sheets) {
    return SheetSpec.portrait(
        "Cut proof",
        "What each plan costs, beside what none of the same pieces costs less than; then with as many"
            + " joints anywhere.",
        List.of(
            Column.text("Job", 18, sheet -> String.join(", ", sheet.jobs())),
            Column.text("Material", 16, sheet -> sheet.key().material()),
            Column.text("Size", 12, sheet -> sheet.key().size()),
            Column.money("Cost", 12, CutSheet::cost),
            Column.money("Lower bound", 12, CutSheet::bound),
            Column.of("Gap %", Look.PERCENT, 9, CutSheets::gap),
            Column.cell("Proven", Look.TEXT, 9, sheet -> Cell.ofYesNo(sheet.proven())),
            Column.count("Joints of runs", 9, CutSheets::joints),
            Column.money("Bound, joints anywhere", 12, CutSheet::anywhere)),
        sheets);
  }

  private static int joints(CutSheet sheet) {
    return sheet.divisions().stream()
        .mapToInt(d -> d.times() * d.run().courses() * d.run().joints())
        .sum();
  }

  private static Cell gap(At<CutSheet> at) {
    double cost = at.record().cost().amount().doubleValue();
    double bound = at.record().bound().amount().doubleValue();
    String costCell = at.cell("Cost");
    return Cell.formula(
        "IF("
            + costCell
            + "=0,0,("
            + costCell
            + "-"
            + at.cell("Lower bound")
            + ")/"
            + costCell
            + "*100)",
        cost == 0 ? 0 : (cost - bound) / cost * 100);
  }
}
