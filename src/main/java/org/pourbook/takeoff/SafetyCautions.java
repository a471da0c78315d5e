package org.pourbook.takeoff;

import java.util.List;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.Placing;

/** What can hurt somebody on pour day, with the reference; those that a job gives cause for. */
final class SafetyCautions {

  private static final Caution ORDERS =
      job(
          "This is an order for material, no design: the local code and a licensed designer decide"
              + " thickness, steel, footings, anchors and soil.",
          "IRC, IBC, ACI 318");

  private static final Caution BURNS =
      job(
          "Wet concrete burns skin and eyes: waterproof boots and gloves, eye wash (from memory).",
          "OSHA 3351, 29 CFR 1926.95, 1926.102");

  private static final Caution DIGGING =
      job(
          "Call 811 before digging and before driving stakes (from memory).",
          "29 CFR 1926.651(b), state law");

  private static final Caution TRUCKS =
      job(
          "A loaded mixer weighs about 66,000 to 70,000 lb: firm ground, 10 to 12 ft wide, 14 ft"
              + " high; as far from an open edge as it is deep.",
          "common practice");

  private static final Caution SILICA =
      job(
          "Sawing, drilling and dry mixing raise silica dust: water or vacuum; limit 50 µg/m3 over"
              + " 8 h, action level 25.",
          "29 CFR 1926.1153 (a)-(d)");

  private static final Caution BARS =
      job(
          "All protruding bars onto which someone could fall are guarded; small mushroom caps only"
              + " stop scratches.",
          "29 CFR 1926.701(b); OSHA memo of 15 January 1997");

  private static final Caution PUMP =
      job(
          "Pump: outriggers on firm ground, hoses secured, 20 ft from power lines (from memory).",
          "29 CFR 1926.702(e), 1926.1408");

  private static final Caution LIFTING =
      job(
          "An 80 lb bag is over the 51 lb that one person lifts well: two people, or smaller bags"
              + " (from memory).",
          "NIOSH 94-110");

  private SafetyCautions() {}

  private static Caution job(String says, String rule) {
    return new Caution("", says, rule);
  }

  /**
   * Returns the cautions of a job.
   *
   * @param quantities of all families
   */
  static Part of(Job job, List<Quantity> quantities) {
    Part part = new Part();
    List.of(ORDERS, BURNS, DIGGING, TRUCKS).forEach(part::add);
    if (asks(quantities, Material.SAW_CUTTING)
        || asks(quantities, Material.BAGGED_CONCRETE)
        || job.joints().stream().anyMatch(Joint::drilled)) {
      part.add(SILICA);
    }
    if (asks(quantities, Material.BAR) || asks(quantities, Material.DOWEL)) {
      part.add(BARS);
    }
    if (job.pours().stream().anyMatch(pour -> pour.placing() == Placing.PUMP)) {
      part.add(PUMP);
    }
    if (asks(quantities, Material.BAGGED_CONCRETE)) {
      part.add(LIFTING);
    }
    return part;
  }

  private static boolean asks(List<Quantity> quantities, Material material) {
    return quantities.stream()
        .map(Quantity::material)
        .anyMatch(key -> key.filter(k -> k.material().equals(material.label())).isPresent());
  }
}
