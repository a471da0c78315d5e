package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.OnOffer;

/**
 * What was on offer when an earlier order was made; what that book does not sell, as it is on offer
 * now. So another price book alone changes no quantity of a job.
 */
public record StillOffered(PriceBook earlier, PriceBook now) implements OnOffer {

  @Override
  public List<String> sizes(String material) {
    List<String> sizes = earlier.sizes(material);
    return sizes.isEmpty() ? now.sizes(material) : sizes;
  }

  @Override
  public Optional<Length> longestStock(MaterialKey key) {
    return earlier.longestStock(key).or(() -> now.longestStock(key));
  }

  @Override
  public Optional<BigDecimal> leastPrice(MaterialKey key) {
    return earlier.leastPrice(key).or(() -> now.leastPrice(key));
  }

  @Override
  public List<SheetSize> sheets(MaterialKey key) {
    List<SheetSize> sheets = earlier.sheets(key);
    return sheets.isEmpty() ? now.sheets(key) : sheets;
  }

  @Override
  public boolean has(MaterialKey key) {
    return earlier.has(key) || now.has(key);
  }
}
