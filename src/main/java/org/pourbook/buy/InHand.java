package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.Optional;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/**
 * What an earlier order brings of an item for a job.
 *
 * @param unit the material's own unit, as it was written
 * @param packHolds own units in one order unit
 * @param packs order units; a job's share of a shared order may be a fraction
 */
public record InHand(
    String job,
    MaterialKey key,
    String unit,
    String supplier,
    String item,
    String orderUnit,
    double packHolds,
    BigDecimal packs,
    Optional<BigDecimal> unitPrice,
    Optional<Money> amount) {}
