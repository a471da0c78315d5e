package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.Optional;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/**
 * An item of a material of a job, before and after a revision. Packs are in order units; a job's
 * share of a shared order may be a fraction.
 *
 * @param net of all of the job's material as it is needed now, in own units, on the first of its
 *     rows; 0 on others
 * @param unit the material's own unit
 * @param packHolds own units in one order unit
 * @param before ordered before
 * @param now needed now: before + besides - back, but for what jobs that share leave one another
 * @param besides to be ordered besides
 * @param back can be sent back
 * @param unitPrice of what is ordered besides, else of what was ordered
 * @param amount of what is ordered besides; empty where it has no price
 * @param credit of what can be sent back, at the price it was ordered at
 * @param inAll of all that is ordered then
 * @param standing why, in words
 */
public record RevisedLine(
    String job,
    MaterialKey key,
    double net,
    String unit,
    String supplier,
    String item,
    String orderUnit,
    double packHolds,
    BigDecimal before,
    BigDecimal now,
    BigDecimal besides,
    BigDecimal back,
    Optional<BigDecimal> unitPrice,
    Optional<Money> amount,
    Money credit,
    Money inAll,
    String standing) {

  /** Returns whether something is to be ordered or can be sent back. */
  public boolean isAnyToDo() {
    return besides.signum() > 0 || back.signum() > 0;
  }

  RevisedLine withNet(double ofAll) {
    return new RevisedLine(
        job, key, ofAll, unit, supplier, item, orderUnit, packHolds, before, now, besides, back,
        unitPrice, amount, credit, inAll, standing);
  }
}
