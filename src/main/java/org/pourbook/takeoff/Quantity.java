package org.pourbook.takeoff;

import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.Unit;

/**
 * One worked-out quantity of a section, plate or joint: a row of the Takeoff sheet.
 *
 * @param section code of the section, plate or joint; empty for the whole job or pour
 * @param what the quantity's name, e.g. {@code turned-down edge}
 * @param amount in {@code unit}, never rounded; negative where something is taken out
 * @param working how it was worked out, ending in the same figure
 * @param rule id of the rule, e.g. {@code CON-3}
 * @param material what is to be bought for it, with {@code amount} then in the material's own unit;
 *     empty for a quantity that only informs (an area, digging)
 * @param pour number of the pour
 * @param allowancePercent written or ruled for this row alone (concrete by section, CON-6); empty:
 *     the material's allowance
 * @param unitText the unit's word in workbooks; of an extra as written ({@code day}), {@code unit}
 *     then being EACH where the word is no unit
 * @param worked the amount in the base unit of {@code unit} with its arithmetic
 */
public record Quantity(
    String section,
    String what,
    double amount,
    Unit unit,
    String working,
    String rule,
    Optional<MaterialKey> material,
    int pour,
    OptionalDouble allowancePercent,
    String unitText,
    Worked worked) {

  /** Makes a quantity that no short formula gives. */
  public Quantity(
      String section,
      String what,
      double amount,
      Unit unit,
      String working,
      String rule,
      Optional<MaterialKey> material,
      int pour,
      OptionalDouble allowancePercent,
      String unitText) {
    this(
        section,
        what,
        amount,
        unit,
        working,
        rule,
        material,
        pour,
        allowancePercent,
        unitText,
        new Worked.Laid(unit.toBase(amount)));
  }

  /** Makes a quantity whose unit is written as workbooks write it. */
  public Quantity(
      String section,
      String what,
      double amount,
      Unit unit,
      String working,
      String rule,
      Optional<MaterialKey> material,
      int pour,
      OptionalDouble allowancePercent) {
    this(
        section, what, amount, unit, working, rule, material, pour, allowancePercent, unit.label());
  }

  /** Returns a quantity that only informs. */
  public static Quantity told(
      String section,
      String what,
      double amount,
      Unit unit,
      String working,
      String rule,
      int pour) {
    return new Quantity(
        section, what, amount, unit, working, rule, Optional.empty(), pour, OptionalDouble.empty());
  }

  /** Returns a quantity of a material, in the material's own unit. */
  public static Quantity of(
      String section,
      String what,
      double amount,
      Unit unit,
      String working,
      String rule,
      MaterialKey material,
      int pour) {
    return new Quantity(
        section,
        what,
        amount,
        unit,
        working,
        rule,
        Optional.of(material),
        pour,
        OptionalDouble.empty());
  }

  /** Returns the same with the arithmetic that gives its amount. */
  public Quantity by(Worked arithmetic) {
    return new Quantity(
        section,
        what,
        amount,
        unit,
        working,
        rule,
        material,
        pour,
        allowancePercent,
        unitText,
        arithmetic);
  }
}
