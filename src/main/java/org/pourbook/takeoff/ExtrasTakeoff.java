package org.pourbook.takeoff;

import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.job.Extra;
import org.pourbook.job.ExtraKind;
import org.pourbook.job.Job;
import org.pourbook.measure.Unit;

/** What the Extras sheet asks for beyond the rules. */
final class ExtrasTakeoff {

  static final String RULE = "EXTRA";

  private ExtrasTakeoff() {}

  /** Returns the extras of a job: all but checks are quantities, to be priced like the rest. */
  static Part of(Job job) {
    Part part = new Part();
    for (Extra extra : job.extras()) {
      if (extra.kind() != ExtraKind.CHECK) {
        part.add(quantity(job, extra));
      }
    }
    return part;
  }

  private static Quantity quantity(Job job, Extra extra) {
    Optional<Unit> unit = Unit.named(extra.unit());
    Optional<Unit> own = Material.named(extra.what()).map(material -> material.unit(job.units()));
    String written = Working.number(extra.quantity()) + " " + extra.unit();
    if (own.isPresent() && unit.isPresent() && own.get().dimension() == unit.get().dimension()) {
      double amount = own.get().fromBase(unit.get().toBase(extra.quantity()));
      String shown = Working.number(amount) + " " + own.get().label();
      String how = written.equals(shown) ? "as written = " + shown : written + " = " + shown;
      return quantity(extra, amount, own.get(), how, own.get().label());
    }
    String label = unit.map(Unit::label).orElse(extra.unit());
    String how = "as written = " + written;
    return quantity(extra, extra.quantity(), unit.orElse(Unit.EACH), how, label);
  }

  private static Quantity quantity(
      Extra extra, double amount, Unit unit, String how, String unitText) {
    return new Quantity(
        extra.section().orElse(""),
        new MaterialKey(extra.what(), extra.size()).toString(),
        amount,
        unit,
        how,
        RULE,
        Optional.of(new MaterialKey(extra.what(), extra.size())),
        extra.pour(),
        OptionalDouble.empty(),
        unitText);
  }
}
