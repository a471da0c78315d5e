package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pourbook.measure.Dimension;
import org.pourbook.measure.Length;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;

/** Stock lengths of boards and bars, where the price book does not give them. */
final class StockLengths {

  /** Boards 8–20 ft by 2 ft (PS 20 and practice; from memory). */
  private static final List<Length> BOARDS =
      Stream.of(8, 10, 12, 14, 16, 18, 20).map(Length::ofFeet).toList();

  /** Bars as mills sell them. */
  private static final List<Length> BARS = Stream.of(20, 40).map(Length::ofFeet).toList();

  private static final List<Length> METRIC_BOARDS =
      Stream.of("2.4", "3", "3.6", "4.2", "4.8", "5.4", "6").map(StockLengths::metres).toList();

  private static final List<Length> METRIC_BARS =
      Stream.of("6", "12").map(StockLengths::metres).toList();

  private StockLengths() {}

  private static Length metres(String metres) {
    return Length.ofMetres(new BigDecimal(metres));
  }

  /** Returns the usual stock lengths of a material (common practice). */
  static List<Length> usual(Material material, UnitSystem units) {
    boolean bar = material == Material.BAR;
    return units.isMetric() ? (bar ? METRIC_BARS : METRIC_BOARDS) : bar ? BARS : BOARDS;
  }

  static Length longestUsual(Material material, UnitSystem units) {
    return usual(material, units).stream().max(Comparator.naturalOrder()).orElseThrow();
  }

  /**
   * Returns the lengths in which an offer's pieces come: its Stock length; the usual ones where it
   * is sold by measure; else the own units in its Pack; none where the row says nothing.
   */
  static List<Length> of(Price price, MaterialKey asked, OwnUnit own, List<Length> usual) {
    Optional<Length> written = price.stockLength();
    if (written.isPresent()) {
      return List.of(written.get());
    }
    if (OrderUnits.measured(price, asked, own).isPresent()) {
      return usual;
    }
    boolean packIsLength =
        price.pack().compareTo(BigDecimal.ONE) > 0 && own.kind().equals(Dimension.LENGTH.name());
    return packIsLength ? List.of(Length.ofMetres(OrderUnits.pack(price, own))) : List.of();
  }
}
