package org.pourbook.book.out;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.pourbook.buy.Line;
import org.pourbook.takeoff.MaterialKey;

/**
 * The order of a job's materials on Materials, which Takeoff follows; other materials come after.
 */
final class MaterialOrder {

  private MaterialOrder() {}

  /**
   * Returns the order of one job's materials.
   *
   * @param lines of the job
   */
  static Comparator<MaterialKey> of(List<Line> lines) {
    Map<String, Integer> materials = new HashMap<>();
    Map<MaterialKey, Integer> keys = new HashMap<>();
    for (Line line : lines) {
      MaterialKey key = line.key().normal();
      materials.putIfAbsent(key.material(), materials.size());
      keys.putIfAbsent(key, keys.size());
    }
    Comparator<MaterialKey> order =
        Comparator.comparingInt((MaterialKey key) -> rank(materials, key.material()))
            .thenComparing(MaterialKey::material)
            .thenComparingInt(key -> keys.getOrDefault(key, Integer.MAX_VALUE))
            .thenComparing(Comparator.naturalOrder());
    Map<MaterialKey, MaterialKey> normal = new HashMap<>();
    return Comparator.comparing(key -> normal.computeIfAbsent(key, MaterialKey::normal), order);
  }

  /** What only informs has no material and comes first. */
  private static int rank(Map<String, Integer> ranks, String material) {
    return material.isEmpty() ? -1 : ranks.getOrDefault(material, Integer.MAX_VALUE);
  }
}
