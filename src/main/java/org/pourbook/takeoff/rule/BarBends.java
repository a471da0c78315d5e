package org.pourbook.takeoff.rule;

import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** BAR-4: cut lengths of bars with 90° bends. */
public final class BarBends {

  /** Above this a bar bends about 8 diameters: #8 is 1 in, 25M and 25 mm bars count as small. */
  private static final Length GREATEST_SMALL = Length.ofMillimetres(26);

  private BarBends() {}

  /** Returns the least inside diameter of a bend: 6 db, of #9 and larger 8 db. */
  @Source(
      rule = "BAR-4",
      says = "Inside bend diameter: 6 bar diameters for #3 to #8, 8 for #9 to #11.",
      value = "6 db; 8 db",
      key = "aci-318-19",
      at = "Table 25.3.1",
      standing = Standing.FROM_MEMORY)
  public static Length insideDiameter(BarSize bar) {
    return bar.diameter().times(bar.diameter().isMoreThan(GREATEST_SMALL) ? 8 : 6);
  }

  /**
   * Returns what a 90° bend takes off two legs measured outside: {@code 2(D/2 + db) − (π/2)(D +
   * db)/2}, which is 2.50 db for D = 6 db.
   */
  @Source(
      rule = "BAR-4",
      says = "A 90° bend takes 2(D/2 + db) − (π/2)(D + db)/2 off two legs measured outside.",
      value = "2.50 db for D = 6 db",
      standing = Standing.COMMON_PRACTICE)
  public static Length deduction(BarSize bar) {
    double db = bar.diameter().metres();
    double d = insideDiameter(bar).metres();
    return Length.ofMetres(2 * (d / 2 + db) - StrictMath.PI / 2 * (d + db) / 2);
  }

  /** Returns the length to cut for legs measured outside that add up to {@code legs}. */
  @Source(
      rule = "BAR-4",
      says = "Cut length: the outside legs less one deduction a bend.",
      standing = Standing.COMMON_PRACTICE)
  public static Length cutLength(Length legs, int bends, BarSize bar) {
    return legs.minus(deduction(bar).times(bends));
  }

  /** Returns the least riser between two bends: 8 db. */
  @Source(
      rule = "BAR-4",
      says = "Between two bends there is room for a riser of 8 bar diameters or more.",
      value = "8 db",
      standing = Standing.COMMON_PRACTICE)
  public static Length leastRiser(BarSize bar) {
    return bar.diameter().times(8);
  }
}
