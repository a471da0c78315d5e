package org.pourbook.takeoff.rule;

import java.util.List;
import java.util.Optional;
import org.pourbook.measure.Unit;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.Source;
import org.pourbook.takeoff.Worked;

/** Compacted base under a floor and what is dug out for concrete (BASE-1, BASE-2). */
public final class CompactedBase {

  private static final List<Stone> STONES =
      List.of(
          new Stone("clean stone", 1.10, 1.35),
          new Stone("crusher run", 1.20, 1.485),
          new Stone("sand", 1.12, 1.35));

  private static final double SWELL = 1.25;

  private CompactedBase() {}

  /**
   * What a base is made of.
   *
   * @param loosePerCompacted loose volume ordered for one of compacted base
   * @param tonPerYd3 short tons in a cubic yard of it, loose
   */
  public record Stone(String name, double loosePerCompacted, double tonPerYd3) {}

  /** Returns the stone of that name (Base material). */
  @Source(
      rule = "BASE-1",
      says = "Base is ordered loose: compacted volume × a factor for its material",
      value = "clean stone × 1.10, crusher run × 1.20, sand × 1.12",
      key = "fm-5-434",
      at = "swell of gravel and sand",
      standing = Standing.FROM_MEMORY)
  @Source(
      rule = "BASE-1",
      says = "A loose cubic yard weighs by its material",
      value = "clean stone 1.35 ton (crushed limestone), crusher run 1.485 ton (gravel)",
      key = "tm-9-2320-366",
      at = "Table 2-15",
      standing = Standing.PUBLISHED)
  @Source(
      rule = "BASE-1",
      says = "A loose cubic yard of sand weighs 1.35 ton",
      value = "sand 1.35 ton",
      standing = Standing.COMMON_PRACTICE)
  public static Optional<Stone> stone(String name) {
    String key = MaterialKey.normal(name);
    return STONES.stream()
        .filter(stone -> MaterialKey.normal(stone.name()).equals(key))
        .findFirst();
  }

  /**
   * Returns the compacted volume of base [m3].
   *
   * @param area plan moved out by the Base margin at plain formed sides [m2]
   * @param displaced concrete that reaches into the base's own thickness [m3]
   */
  @Source(
      rule = "BASE-1",
      says =
          "Base is the plan moved out by the Base margin at plain formed sides × its thickness, less"
              + " what edges, thickenings and footings displace in it",
      value = "margin 6 in",
      standing = Standing.COMMON_PRACTICE)
  public static Worked compacted(Worked area, Worked thickness, Worked displaced) {
    if (displaced.value() == 0 && displaced.isLive()) {
      return area.times(thickness);
    }
    Worked left = area.times(thickness).minus(displaced);
    return left.value() < 0 ? new Worked.Laid(0) : left;
  }

  /** Returns the mass to order for a compacted volume [kg]. */
  @Source(
      rule = "BASE-1",
      says = "Ordered tons are compacted yd3 × loose factor × ton a loose yd3",
      standing = Standing.COMMON_PRACTICE)
  public static Worked mass(Worked compacted, Stone stone) {
    double kgPerLooseM3 = Unit.TON.toBase(stone.tonPerYd3()) / Unit.YD3.toBase(1);
    return compacted.times(stone.loosePerCompacted() * kgPerLooseM3);
  }

  /** Returns the loose volume of ground dug out [m3]. */
  @Source(
      rule = "BASE-2",
      says = "Digging is listed as it lies (bank) and loose, for hauling",
      value = "loose = bank × 1.25",
      standing = Standing.COMMON_PRACTICE)
  public static Worked loose(Worked bank) {
    return bank.times(SWELL);
  }
}
