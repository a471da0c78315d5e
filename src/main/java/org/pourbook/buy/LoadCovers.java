package org.pourbook.buy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.Quantity;
import org.pourbook.takeoff.TakeOff;

/** What each truckload fills, when sections are placed one after another as they are listed. */
final class LoadCovers {

  /** Part of the pour by which two ends may differ and still be the same place. */
  private static final double SAME = 1e-9;

  private LoadCovers() {}

  /**
   * Returns the section codes that each load reaches, joined by commas.
   *
   * @param beforeM3 what an earlier order brings first [m3]
   */
  static List<String> of(
      TakeOff takeOff, int pour, String mix, double beforeM3, List<Double> loadsM3) {
    Map<String, Double> sections = sections(takeOff, pour, mix);
    double net = sections.values().stream().mapToDouble(v -> v).sum();
    double order = beforeM3 + loadsM3.stream().mapToDouble(v -> v).sum();
    List<String> covers = new ArrayList<>();
    double from = beforeM3 / order;
    for (double load : loadsM3) {
      double to = from + load / order;
      covers.add(String.join(", ", reached(sections, net, from, to)));
      from = to;
    }
    return covers;
  }

  /** Returns the concrete of each section, in take-off order. */
  private static Map<String, Double> sections(TakeOff takeOff, int pour, String mix) {
    Optional<MaterialKey> key = Optional.of(Material.CONCRETE.of(mix).normal());
    Map<String, Double> sections = new LinkedHashMap<>();
    for (Quantity quantity : takeOff.quantities()) {
      boolean ofPour = quantity.pour() == pour && !quantity.section().isEmpty();
      if (ofPour && quantity.material().map(MaterialKey::normal).equals(key)) {
        sections.merge(quantity.section(), quantity.amount(), Double::sum);
      }
    }
    return sections;
  }

  private static List<String> reached(
      Map<String, Double> sections, double net, double from, double to) {
    List<String> reached = new ArrayList<>();
    double start = 0;
    for (Map.Entry<String, Double> section : sections.entrySet()) {
      double end = start + section.getValue() / net;
      if (end > from + SAME && start < to - SAME) {
        reached.add(section.getKey());
      }
      start = end;
    }
    return reached;
  }
}
