package org.pourbook.takeoff;

import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.Unit;

/**
 * One worked-out quantity of a section, plate or joint: a row of the Takeoff sheet.
 *
 * @param kind what it is of: the same for rows of many jobs
 * @param section code of the section, plate or joint; empty for the whole job or pour
 * @param amount in the kind's unit, never rounded; negative where something is taken out
 * @param working how it was worked out, ending in the same figure
 * @param worked the amount in the base unit of its unit with its arithmetic; empty where no short
 *     formula gives it
 */
public record Quantity(
    Kind kind, String section, double amount, String working, Optional<Worked> worked) {

  /**
   * What a quantity is of.
   *
   * @param what the quantity's name, e.g. {@code turned-down edge}
   * @param rule id of the rule, e.g. {@code CON-3}
   * @param material what is to be bought for it, the amount then being in the material's own unit;
   *     empty for a quantity that only informs (an area, digging)
   * @param pour number of the pour
   * @param allowancePercent written or ruled for this row alone (concrete by section, CON-6);
   *     empty: the material's allowance
   * @param unitText the unit's word in workbooks; of an extra as written ({@code day}), {@code
   *     unit} then being EACH where the word is no unit
   */
  public record Kind(
      String what,
      Unit unit,
      String rule,
      Optional<MaterialKey> material,
      int pour,
      OptionalDouble allowancePercent,
      String unitText) {}

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
        new Kind(what, unit, rule, material, pour, allowancePercent, unitText),
        section,
        amount,
        working,
        Optional.empty());
  }

  public String what() {
    return kind.what();
  }

  public Unit unit() {
    return kind.unit();
  }

  public String rule() {
    return kind.rule();
  }

  public Optional<MaterialKey> material() {
    return kind.material();
  }

  public int pour() {
    return kind.pour();
  }

  public OptionalDouble allowancePercent() {
    return kind.allowancePercent();
  }

  public String unitText() {
    return kind.unitText();
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

  /** Returns the same with the arithmetic that gives its amount, where that is a formula. */
  public Quantity by(Worked arithmetic) {
    Optional<Worked> live = Optional.of(arithmetic).filter(Worked::isLive);
    return new Quantity(kind, section, amount, working, live);
  }
}
