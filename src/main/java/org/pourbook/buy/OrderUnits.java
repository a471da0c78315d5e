package org.pourbook.buy;

import static org.pourbook.measure.Dimension.COUNT;
import static org.pourbook.measure.Dimension.LENGTH;
import static org.pourbook.measure.Dimension.MASS;
import static org.pourbook.measure.Dimension.VOLUME;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Dimension;
import org.pourbook.measure.LumberSize;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.rule.CompactedBase;
import org.pourbook.takeoff.rule.ConcreteOrder;

/** How much of a material one order unit holds (BUY-1), in the base unit of its own unit. */
final class OrderUnits {

  /** Loose weight of a base material that BASE-1 does not know [ton/yd3]. */
  private static final double USUAL_TON_PER_YD3 = 1.35;

  private OrderUnits() {}

  /**
   * Returns what one order unit holds: converted exactly where the order unit is itself a measure,
   * else by Pack. In pieces with a stock length or a sheet size, all of them together.
   *
   * @param asked the material asked for; the row itself may answer any size
   */
  static double held(Price price, MaterialKey asked, OwnUnit own) {
    OptionalDouble measured = measured(price, asked, own);
    if (measured.isPresent()) {
      return measured.getAsDouble();
    }
    double pack = price.pack().doubleValue();
    if (price.stockLength().isPresent() && own.kind().equals(LENGTH.name())) {
      return pack * price.stockLength().get().metres();
    }
    if (price.sheetLength().isPresent()
        && price.sheetWidth().isPresent()
        && own.kind().equals(Dimension.AREA.name())) {
      return pack * price.sheetLength().get().metres() * price.sheetWidth().get().metres();
    }
    if (isBagWithoutPack(price, asked)) {
      return ConcreteOrder.bagM3(asked.size());
    }
    return pack(price, own);
  }

  /** Returns a pack in the base unit of its own unit. */
  static double pack(Price price, OwnUnit own) {
    double pack = price.pack().doubleValue();
    return price
        .packUnit()
        .filter(unit -> unit.dimension().name().equals(own.kind()))
        .map(unit -> unit.toBase(pack))
        .orElseGet(() -> own.toBase(pack));
  }

  /** Returns the same where the order unit is a measure; empty where Pack says it. */
  static OptionalDouble measured(Price price, MaterialKey asked, OwnUnit own) {
    if (isBoardFeet(price.orderUnit())) {
      return boardLength(price.orderUnit(), asked.size());
    }
    Optional<Unit> unit = Unit.named(price.orderUnit()).filter(u -> u.dimension() != COUNT);
    if (unit.isEmpty()) {
      boolean sameWord = own.unit().isEmpty() && own.label().equalsIgnoreCase(price.orderUnit());
      return sameWord ? OptionalDouble.of(1) : OptionalDouble.empty();
    }
    Dimension from = unit.get().dimension();
    double base = unit.get().toBase(1);
    if (own.kind().equals(from.name())) {
      return OptionalDouble.of(base);
    }
    if (from == MASS && own.kind().equals(LENGTH.name())) {
      return barLength(base, asked.size());
    }
    return isBase(asked) ? looseBase(from, base, asked.size()) : OptionalDouble.empty();
  }

  /** Returns the length of bar that weighs so much, by its tabulated weight (BAR-6). */
  private static OptionalDouble barLength(double kg, String size) {
    return BarSize.named(size).stream().mapToDouble(bar -> kg / bar.massKgPerM()).findFirst();
  }

  /** Returns the metres of board in a board-foot unit: nominal T × W × L / 12, in, in, ft. */
  private static OptionalDouble boardLength(String unit, String size) {
    double boardFeet = key(unit).equals("mbf") ? 1000 : 1;
    return LumberSize.named(size).stream()
        .mapToDouble(
            board ->
                Unit.FT.toBase(
                    boardFeet * 12 / (board.nominalThicknessIn() * board.nominalWidthIn())))
        .findFirst();
  }

  /** Returns the weight of a loose volume of base (BASE-1). */
  private static OptionalDouble looseBase(Dimension from, double m3, String size) {
    double tonPerYd3 =
        CompactedBase.stone(size).map(CompactedBase.Stone::tonPerYd3).orElse(USUAL_TON_PER_YD3);
    double kgPerM3 = Unit.TON.toBase(tonPerYd3) / Unit.YD3.toBase(1);
    return from == VOLUME ? OptionalDouble.of(m3 * kgPerM3) : OptionalDouble.empty();
  }

  private static boolean isBase(MaterialKey asked) {
    return Material.named(asked.material()).equals(Optional.of(Material.BASE_GRAVEL));
  }

  private static boolean isBagWithoutPack(Price price, MaterialKey asked) {
    return Material.named(asked.material()).equals(Optional.of(Material.BAGGED_CONCRETE))
        && price.pack().compareTo(BigDecimal.ONE) == 0;
  }

  private static boolean isBoardFeet(String unit) {
    return switch (key(unit)) {
      case "mbf", "bf", "bdft", "boardfeet", "boardfoot" -> true;
      default -> false;
    };
  }

  private static String key(String unit) {
    return unit.replace(" ", "").toLowerCase(Locale.ROOT);
  }
}
