package org.pourbook.buy;

import org.pourbook.measure.Money;

/**
 * A job's money, its share of shared orders in: materials + services + delivery and fees + tax =
 * total, to the cent.
 *
 * @param unpriced how many Materials rows have no price
 */
public record JobTotals(
    String job,
    Money materials,
    Money services,
    Money deliveryAndFees,
    Money tax,
    Money total,
    int unpriced) {}
