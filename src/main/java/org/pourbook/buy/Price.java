package org.pourbook.buy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.problem.Place;
import org.pourbook.takeoff.MaterialKey;

/**
 * A row of the price book.
 *
 * @param key size empty: answers any size of its material
 * @param orderUnit what {@code price} buys, as written: {@code each}, {@code box}, {@code yd3} …
 * @param pack how many one order unit holds: pieces, where a stock or sheet length is given; else
 *     the material's own unit; 1 when not written
 * @param packUnit written behind the pack, {@code 5 gal}; empty: the own unit of who buys it,
 *     gallons for one job and litres for another
 * @param from the price holds from this many order units
 */
public record Price(
    MaterialKey key,
    String item,
    String description,
    String supplier,
    String orderUnit,
    BigDecimal pack,
    Optional<Unit> packUnit,
    BigDecimal price,
    BigDecimal from,
    Optional<Length> stockLength,
    Optional<Length> sheetLength,
    Optional<Length> sheetWidth,
    OptionalInt inStock,
    boolean taxable,
    int leadDays,
    Optional<LocalDate> validUntil,
    String costCode,
    Optional<MaterialKey> insteadOf,
    Place place) {

  /** Returns this row with fewer in stock. */
  Price withInStock(int left) {
    return new Price(
        key,
        item,
        description,
        supplier,
        orderUnit,
        pack,
        packUnit,
        price,
        from,
        stockLength,
        sheetLength,
        sheetWidth,
        OptionalInt.of(left),
        taxable,
        leadDays,
        validUntil,
        costCode,
        insteadOf,
        place);
  }
}
