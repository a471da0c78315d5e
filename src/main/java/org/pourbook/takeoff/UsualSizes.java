package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.pourbook.measure.Length;
import org.pourbook.measure.LumberSize;
import org.pourbook.measure.UnitSystem;

/**
 * The trade's usual sizes, for what is asked of several suppliers alike: which sizes are wanted may
 * not depend on what one of them sells (common practice). Stock lengths and sheets, on which laps
 * and butts depend, are those of {@code stock}.
 */
public record UsualSizes(UnitSystem units, OnOffer stock) implements OnOffer {

  private static final List<String> BOARDS = List.of("2x4", "2x6", "2x8", "2x10", "2x12");
  private static final List<String> METRIC_BOARDS =
      List.of("38x89", "38x140", "38x184", "38x235", "38x286");
  private static final List<String> STONES = List.of("clean stone", "crusher run", "sand");
  private static final List<String> STAKES = List.of("24 in", "36 in", "48 in");

  @Override
  public List<String> sizes(String material) {
    return Material.named(material)
        .map(
            known ->
                switch (known) {
                  case FORM_BOARD -> units.isMetric() ? METRIC_BOARDS : BOARDS;
                  case STAKE -> STAKES;
                  case BASE_GRAVEL -> STONES;
                  default -> List.<String>of();
                })
        .orElse(List.of());
  }

  @Override
  public Optional<Length> longestStock(MaterialKey key) {
    return stock.longestStock(key);
  }

  /**
   * Returns the nominal section of a board, by which boards are priced; nothing of other things.
   */
  @Override
  public Optional<BigDecimal> leastPrice(MaterialKey key) {
    return has(key) && Material.named(key.material()).equals(Optional.of(Material.FORM_BOARD))
        ? LumberSize.named(key.size())
            .map(
                board ->
                    BigDecimal.valueOf(board.nominalThicknessIn())
                        .multiply(BigDecimal.valueOf(board.nominalWidthIn())))
        : Optional.empty();
  }

  @Override
  public List<SheetSize> sheets(MaterialKey key) {
    return stock.sheets(key);
  }

  @Override
  public boolean has(MaterialKey key) {
    String size = MaterialKey.normal(key.size());
    return sizes(key.material()).stream().map(MaterialKey::normal).anyMatch(size::equals);
  }
}
