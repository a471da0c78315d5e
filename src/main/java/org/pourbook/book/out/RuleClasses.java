package org.pourbook.book.out;

import java.util.List;

/**
 * The classes that hold rules, by name since some are known to their own package only. A test holds
 * the list complete.
 */
final class RuleClasses {

  private static final String PACKAGE = "org.pourbook.";

  static final List<String> NAMES =
      List.of(
          "buy.CheapestTotal",
          "buy.CutOptions",
          "buy.CutOrBought",
          "buy.LoadPlans",
          "buy.Offer",
          "buy.OrderFees",
          "buy.Packs",
          "buy.PlacingTimes",
          "buy.SalesTax",
          "buy.Shares",
          "buy.WorkingDays",
          "takeoff.rule.BarBends",
          "takeoff.rule.BarCaps",
          "takeoff.rule.BarLaps",
          "takeoff.rule.BarMats",
          "takeoff.rule.BarSupports",
          "takeoff.rule.BarWeights",
          "takeoff.rule.BoardLength",
          "takeoff.rule.BoardPieces",
          "takeoff.rule.BoardStack",
          "takeoff.rule.BoltLayout",
          "takeoff.rule.BoltLimits",
          "takeoff.rule.CodeMinimums",
          "takeoff.rule.CompactedBase",
          "takeoff.rule.ConcreteOrder",
          "takeoff.rule.ControlJoints",
          "takeoff.rule.DepthOrder",
          "takeoff.rule.DevelopmentLengths",
          "takeoff.rule.Dowels",
          "takeoff.rule.EdgeBars",
          "takeoff.rule.Finishing",
          "takeoff.rule.FormBraces",
          "takeoff.rule.FormRelease",
          "takeoff.rule.FormReuse",
          "takeoff.rule.FormScrews",
          "takeoff.rule.FormStakes",
          "takeoff.rule.MeshSheets",
          "takeoff.rule.PlacingTime",
          "takeoff.rule.PlatePieces",
          "takeoff.rule.PourWeather",
          "takeoff.rule.RetarderStrips",
          "takeoff.rule.SlabVolume",
          "takeoff.rule.SpareBolts",
          "takeoff.rule.StepTieBars",
          "takeoff.rule.TieWire",
          "takeoff.rule.TurnedDownEdge");

  private RuleClasses() {}

  static List<Class<?>> all() {
    return NAMES.stream().<Class<?>>map(RuleClasses::load).toList();
  }

  private static Class<?> load(String name) {
    try {
      return Class.forName(PACKAGE + name);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException("no class " + name, e);
    }
  }
}
