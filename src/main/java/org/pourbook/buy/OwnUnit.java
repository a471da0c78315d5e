package org.pourbook.buy;

import java.util.Locale;
import java.util.Optional;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.Material;

/**
 * The unit in which a material's net and need are given.
 *
 * <p>Amounts are added up in the base unit of its dimension (m, m2, m3, kg, pieces, hours), so that
 * jobs of both systems can share an order. A unit that is no measure ({@code roll}, {@code day}) is
 * its own base.
 *
 * @param unit empty for a word that is no measure
 */
record OwnUnit(String label, Optional<Unit> unit) {

  /** Returns a material's own unit in a system. */
  static OwnUnit of(Material material, UnitSystem units) {
    Unit unit = material.unit(units);
    return new OwnUnit(unit.label(), Optional.of(unit));
  }

  /** Returns a unit as an extra writes it. */
  static OwnUnit written(String word) {
    Optional<Unit> unit = Unit.named(word);
    return new OwnUnit(unit.map(Unit::label).orElse(word.strip()), unit);
  }

  double toBase(double amount) {
    return unit.map(known -> known.toBase(amount)).orElse(amount);
  }

  double fromBase(double base) {
    return unit.map(known -> known.fromBase(base)).orElse(base);
  }

  /** Returns a word that is the same for units whose amounts may be added up. */
  String kind() {
    return unit.map(known -> known.dimension().name()).orElse(label.toLowerCase(Locale.ROOT));
  }
}
