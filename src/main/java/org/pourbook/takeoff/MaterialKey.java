package org.pourbook.takeoff;

/** What the tool asks the price book for: a material and a trade size (may be empty). */
public record MaterialKey(String material, String size) implements Comparable<MaterialKey> {
  public MaterialKey {
    material = material.strip();
    size = size.strip();
  }

  /** Returns the same key for two ways of writing a size: no case, spaces or inch marks. */
  public MaterialKey normal() {
    String sameMaterial = normal(material);
    String sameSize = normal(size);
    return sameMaterial.equals(material) && sameSize.equals(size)
        ? this
        : new MaterialKey(sameMaterial, sameSize);
  }

  /** Returns a size or material as it is compared. */
  public static String normal(String text) {
    return WrittenSize.normal(text);
  }

  @Override
  public int compareTo(MaterialKey other) {
    int byMaterial = material.compareTo(other.material);
    return byMaterial != 0 ? byMaterial : size.compareTo(other.size);
  }

  @Override
  public String toString() {
    return size.isEmpty() ? material : material + " " + size;
  }
}
