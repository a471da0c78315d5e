package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.pourbook.desk.Estimate;
import org.pourbook.job.Job;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.BarMark;
import org.pourbook.takeoff.BoltPiece;
import org.pourbook.takeoff.JointLine;
import org.pourbook.takeoff.TakeOff;

/** What the crew bends, ties and sets: bars, bolts, joints. */
final class SteelSheets {

  private SteelSheets() {}

  /** A row with the job it belongs to. */
  record Of<T>(Job job, T item) {
    UnitSystem units() {
      return job.units();
    }
  }

  static <T> List<Of<T>> rows(Estimate estimate, Function<TakeOff, List<T>> items) {
    return MadeRows.of(
        estimate.takeOffs(), items, (takeOff, item) -> new Of<>(takeOff.job(), item));
  }

  static SheetSpec<Of<BarMark>> barList(Estimate estimate, BatchUnits units) {
    List<Column<Of<BarMark>>> columns = new ArrayList<>();
    columns.add(Column.text("Job", 12, row -> row.job().code()));
    columns.addAll(units.column(Of::units));
    columns.add(Column.cell("Done", Look.TICK, 6, row -> Cell.BLANK));
    columns.add(Column.text("Section", 12, row -> row.item().section()));
    columns.add(Column.text("Mark", 13, row -> row.item().mark()));
    columns.add(Column.text("Size", 7, row -> row.item().size().designation()));
    columns.add(Column.text("Shape", 9, row -> row.item().shape().label()));
    columns.add(Column.count("Count", 7, row -> row.item().count()));
    columns.addAll(length(units, "Cut length", mark -> Optional.of(mark.cutLength())));
    columns.addAll(length(units, "A", mark -> Optional.of(mark.a())));
    columns.addAll(length(units, "B", BarMark::b));
    columns.addAll(length(units, "C", BarMark::c));
    columns.add(Column.count("Laps", 6, row -> row.item().laps()));
    columns.add(Column.number(units.weightHeading("Weight"), Look.NUMBER, 11, SteelSheets::weight));
    return SheetSpec.landscape(
        "Bar list",
        "Every bar mark: straight, corner (A and B), step (A, riser B, C); legs are outside"
            + " lengths.",
        columns,
        rows(estimate, TakeOff::barMarks));
  }

  private static List<Column<Of<BarMark>>> length(
      BatchUnits units, String name, Function<BarMark, Optional<Length>> length) {
    return BatchUnits.lengths(
        units.lengthHeading(name), name + " as read", Of::units, row -> length.apply(row.item()));
  }

  private static double weight(Of<BarMark> row) {
    BarMark mark = row.item();
    return BatchUnits.weight(
        mark.count() * mark.cutLength().metres() * mark.size().massKgPerM(), row.units());
  }

  static SheetSpec<Of<BoltPiece>> bolts(Estimate estimate, BatchUnits units) {
    List<Column<Of<BoltPiece>>> columns = new ArrayList<>();
    columns.add(Column.text("Job", 12, row -> row.job().code()));
    columns.addAll(units.column(Of::units));
    columns.add(Column.cell("Done", Look.TICK, 6, row -> Cell.BLANK));
    columns.add(Column.text("Plate", 9, row -> row.item().plate()));
    columns.add(Column.count("Piece", 6, row -> row.item().piece()));
    columns.add(Column.count("Count", 6, row -> row.item().count()));
    columns.addAll(
        BatchUnits.lengths(
            units.lengthHeading("Length"),
            "Length as read",
            Of::units,
            row -> Optional.of(row.item().length())));
    columns.add(Column.text("Bolt", 13, row -> row.item().bolt().designation()));
    columns.add(Column.count("Bolts", 6, row -> row.item().bolts()));
    columns.add(Column.text("Positions", 60, SteelSheets::positions));
    columns.add(
        Column.number(
            units.smallHeading("Embedment"),
            Look.NUMBER,
            11,
            row -> BatchUnits.small(row.item().embedment(), row.units())));
    return SheetSpec.landscape(
        "Bolts",
        "Where the bolts of each plate piece stand, measured from its left end.",
        columns,
        rows(estimate, TakeOff::boltPieces));
  }

  private static String positions(Of<BoltPiece> row) {
    return row.item().positions().stream()
        .map(position -> LengthFormat.of(position, row.units()))
        .collect(Collectors.joining(", "));
  }

  static SheetSpec<Of<JointLine>> joints(Estimate estimate, BatchUnits units) {
    List<Column<Of<JointLine>>> columns = new ArrayList<>();
    columns.add(Column.text("Job", 12, row -> row.job().code()));
    columns.addAll(units.column(Of::units));
    columns.add(Column.text("Section", 12, row -> row.item().section()));
    columns.add(Column.text("Joint", 9, row -> row.item().joint()));
    columns.add(Column.text("What", 30, row -> row.item().what()));
    columns.addAll(
        BatchUnits.lengths(
            units.lengthHeading("Length"),
            "Length as read",
            Of::units,
            row -> Optional.of(row.item().length())));
    columns.add(
        Column.cell(
            units.smallHeading("Depth"),
            Look.NUMBER,
            9,
            row ->
                row.item()
                    .depth()
                    .map(depth -> Cell.of(BatchUnits.small(depth, row.units())))
                    .orElse(Cell.BLANK)));
    columns.add(Column.count("Bars", 6, row -> row.item().bars()));
    columns.add(Column.text("Bar", 22, row -> row.item().barText()));
    columns.add(Column.text("Note", 36, row -> row.item().note()));
    return SheetSpec.landscape(
        "Joints",
        "Control joints to saw or tool, and joints with dowels, ties or filler.",
        columns,
        rows(estimate, TakeOff::joints));
  }
}
