package org.pourbook.book.out;

import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.Plate;
import org.pourbook.job.Section;
import org.pourbook.problem.Place;
import org.pourbook.takeoff.Quantity;
import org.pourbook.takeoff.Worked;

/** The live part of Takeoff: amounts on Given Sections, and where each row was given. */
final class TakeoffFormulas {

  private final TakeoffSheet takeoff;
  private final GivenSheets given;

  TakeoffFormulas(TakeoffSheet takeoff, GivenSheets given) {
    this.takeoff = takeoff;
    this.given = given;
  }

  Cell amount(At<TakeoffSheet.Row> at) {
    Quantity quantity = at.record().quantity();
    return formula(at.record())
        .map(formula -> Cell.live(formula, byFormula(quantity), quantity.amount()))
        .orElse(Cell.of(quantity.amount()));
  }

  private static double byFormula(Quantity quantity) {
    return quantity.unit().fromBase(quantity.worked().orElseThrow().value());
  }

  private Optional<String> formula(TakeoffSheet.Row row) {
    Quantity quantity = row.quantity();
    Job job = row.job();
    Arithmetic arithmetic = new Arithmetic(worked -> cellOf(job, worked));
    return quantity.worked().flatMap(worked -> arithmetic.formula(worked, quantity.unit()));
  }

  private Optional<Arithmetic.Cell> cellOf(Job job, Worked worked) {
    if (worked instanceof Worked.Given cell) {
      return given
          .figure(cell.section(), cell.figure())
          .map(name -> new Arithmetic.Cell(name, cell.perUnit()));
    }
    if (worked instanceof Worked.Other other) {
      return takeoff
          .rowOf(job, other.section(), other.what())
          .map(
              row ->
                  new Arithmetic.Cell(
                      takeoff.amount(row), takeoff.quantityAt(row).unit().toBase(1)));
    }
    return Optional.empty();
  }

  /** Returns whether the amount follows from cells that may be changed. */
  Cell live(At<TakeoffSheet.Row> at) {
    return Cell.ofYesNo(isLive(at.record()));
  }

  private boolean isLive(TakeoffSheet.Row row) {
    if (row.quantity().worked().isEmpty()) {
      return false;
    }
    Worked worked = row.quantity().worked().get();
    if (worked instanceof Worked.Product product) {
      worked = product.factors().get(0);
    }
    if (worked instanceof Worked.Other other) {
      return takeoff
          .rowOf(row.job(), other.section(), other.what())
          .filter(there -> isLive(new TakeoffSheet.Row(row.job(), takeoff.quantityAt(there), NONE)))
          .isPresent();
    }
    return formula(row).isPresent();
  }

  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** Returns what the row's waste takes beyond the allowance of all its material. */
  Cell ownWaste(At<TakeoffSheet.Row> at) {
    TakeoffSheet.Row row = at.record();
    if (row.allowancePercent().isEmpty()) {
      return Cell.BLANK;
    }
    double mean = row.allowancePercent().getAsDouble();
    double own = row.quantity().allowancePercent().orElse(mean);
    String waste = section(row).flatMap(given::waste).orElseGet(() -> Arithmetic.number(own));
    return Cell.formula(
        at.cell(TakeoffSheet.AMOUNT) + "*(" + waste + "-" + Arithmetic.number(mean) + ")/100",
        row.quantity().amount() * (own - mean) / 100);
  }

  private static Optional<Section> section(TakeoffSheet.Row row) {
    return row.job().sections().stream()
        .filter(section -> section.code().equals(row.quantity().section()))
        .findFirst();
  }

  /** Returns a link to the row of the input that a quantity is of. */
  Cell given(TakeoffSheet.Row row) {
    String code = row.quantity().section();
    Optional<Place> place =
        section(row)
            .map(Section::place)
            .or(
                () ->
                    row.job().plates().stream()
                        .filter(p -> p.code().equals(code))
                        .findFirst()
                        .map(Plate::place))
            .or(
                () ->
                    row.job().joints().stream()
                        .filter(j -> j.code().equals(code))
                        .findFirst()
                        .map(Joint::place));
    return given.link(place.orElse(row.job().place()));
  }
}
