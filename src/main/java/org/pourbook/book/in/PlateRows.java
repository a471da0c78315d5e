package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.job.Plate;
import org.pourbook.job.Position;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.measure.BoltSize;
import org.pourbook.measure.Greatest;
import org.pourbook.measure.Length;
import org.pourbook.measure.NumberText;
import org.pourbook.measure.Unit;

/** The wall plates of a job. */
final class PlateRows {

  private final JobDraft job;
  private final SectionRows sections;
  private final Practice practice;
  private final Set<String> codes = new HashSet<>();

  private PlateRows(JobDraft job, SectionRows sections, Practice practice) {
    this.job = job;
    this.sections = sections;
    this.practice = practice;
  }

  /** Returns the sound plates. */
  static List<Plate> read(JobDraft job, SectionRows sections, Practice practice) {
    PlateRows rows = new PlateRows(job, sections, practice);
    List<Plate> plates = new ArrayList<>();
    job.rows(InputSheet.PLATES).forEach(row -> rows.plate(row).ifPresent(plates::add));
    return plates;
  }

  private Optional<Plate> plate(TableRow row) {
    Cells cells = job.cells(row);
    Optional<String> code = SectionNames.unique(cells, "Plate", codes);
    Optional<Length> length = cells.feet("Length");
    Optional<BoltSize> written = cells.parsed("Bolt", BoltSize::named);
    BoltSize bolt =
        written.orElseGet(() -> BoltSize.named(practice.text(Setting.BOLT)).orElseThrow());
    Length thickness =
        cells.length("Plate thickness").orElse(practice.length(Setting.PLATE_THICKNESS));
    Length projection = cells.length("Projection").orElse(thickness.plus(Length.ofInches(1)));
    if (!projection.isLessThan(bolt.length())) {
      cells.refuse(
          cells.isBlank("Projection") ? "Bolt" : "Projection",
          "a bolt longer than it stands out of the concrete");
    }
    Optional<Length> x = cells.feet("X");
    Optional<Length> y = cells.feet("Y");
    if (cells.isBlank("X") != cells.isBlank("Y")) {
      cells.refuse(cells.isBlank("X") ? "X" : "Y", "X and Y, or neither");
    }
    Optional<String> section = SectionNames.existing(cells, "Section", sections);
    int count = cells.count("Count").orElse(1);
    Optional<Length> spacing = cells.feet("Spacing");
    Length piece = cells.feet("Piece length").orElse(practice.length(Setting.PLATE_PIECE));
    if (length.orElse(Length.ZERO).metres() * count > Greatest.RUN_M) {
      Unit unit = cells.units().isMetric() ? Unit.M : Unit.FT;
      String most = NumberText.text(NumberText.of(Math.rint(unit.fromBase(Greatest.RUN_M))));
      cells.refuse(
          "Count", "walls that are at most " + most + " " + unit.label() + " long together");
    }
    Optional<Length> width = cells.length("Width");
    OptionalDouble direction = cells.decimal("Direction");
    if (!job.accepts(cells)) {
      return Optional.empty();
    }
    Optional<Position> start =
        x.isPresent() && y.isPresent()
            ? Optional.of(new Position(x.get(), y.get()))
            : Optional.empty();
    return Optional.of(
        new Plate(
            code.orElseThrow(),
            section,
            length.orElseThrow(),
            count,
            bolt,
            spacing,
            thickness,
            projection,
            piece,
            width,
            start,
            direction,
            row.place()));
  }
}
