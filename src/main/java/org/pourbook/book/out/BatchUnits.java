package org.pourbook.book.out;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pourbook.job.Job;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;

/** Which systems of units the jobs of a batch are in, and so what headings say. */
record BatchUnits(boolean us, boolean metric) {

  /** A comma and a space at which a heading is not broken. */
  private static final String NO_BREAK = ",\u00a0";

  static BatchUnits of(List<Job> jobs) {
    boolean metric = jobs.stream().anyMatch(job -> job.units().isMetric());
    boolean us = jobs.stream().anyMatch(job -> !job.units().isMetric());
    return new BatchUnits(us || !metric, metric);
  }

  boolean isMixed() {
    return us && metric;
  }

  /** Returns the heading with its unit: {@code Volume (yd3)}, of a mixed batch with both. */
  String heading(String name, Unit usUnit, Unit metricUnit) {
    String unit =
        isMixed()
            ? usUnit.label() + NO_BREAK + metricUnit.label()
            : (metric ? metricUnit : usUnit).label();
    return name + " (" + unit + ")";
  }

  String lengthHeading(String name) {
    return heading(name, Unit.FT, Unit.M);
  }

  /** Returns a heading of thicknesses and depths. */
  String smallHeading(String name) {
    return heading(name, Unit.IN, Unit.MM);
  }

  String volumeHeading(String name) {
    return heading(name, Unit.YD3, Unit.M3);
  }

  String weightHeading(String name) {
    return heading(name, Unit.LB, Unit.KG);
  }

  /** Returns the column that says which system a row is in, where the batch has both. */
  <R> List<Column<R>> column(Function<R, UnitSystem> unitsOf) {
    return isMixed()
        ? List.of(Column.text("Units", 5, row -> unitsOf.apply(row).label()))
        : List.of();
  }

  /** Returns two columns: the length as a number for the screen, and as a crew reads it. */
  static <R> List<Column<R>> lengths(
      String heading,
      String readHeading,
      Function<R, UnitSystem> unitsOf,
      Function<R, Optional<Length>> lengthOf) {
    return List.of(
        Column.onScreen(
            Column.cell(
                heading,
                Look.NUMBER,
                9,
                row ->
                    lengthOf
                        .apply(row)
                        .map(length -> Cell.of(length(length, unitsOf.apply(row))))
                        .orElse(Cell.BLANK))),
        Column.text(
            readHeading,
            12,
            row ->
                lengthOf
                    .apply(row)
                    .map(length -> LengthFormat.of(length, unitsOf.apply(row)))
                    .orElse("")));
  }

  static double length(Length length, UnitSystem units) {
    return units.isMetric() ? length.metres() : length.feet();
  }

  static double small(Length length, UnitSystem units) {
    return units.isMetric() ? length.millimetres() : length.inches();
  }

  static double volume(double m3, UnitSystem units) {
    return units.isMetric() ? m3 : Unit.YD3.fromBase(m3);
  }

  /** Returns a volume to nine decimals: what was ordered in quarters of a yard is shown in them. */
  static double loaded(double m3, UnitSystem units) {
    return BigDecimal.valueOf(volume(m3, units)).setScale(9, RoundingMode.HALF_UP).doubleValue();
  }

  static double weight(double kg, UnitSystem units) {
    return units.isMetric() ? kg : Unit.LB.fromBase(kg);
  }

  /** Returns what a bar of one own unit weighs: lb/ft, or kg/m. */
  static double weightPerLength(double kgPerM, UnitSystem units) {
    return units.isMetric() ? kgPerM : Unit.LB.fromBase(kgPerM * Unit.FT.toBase(1));
  }
}
