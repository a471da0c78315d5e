package org.pourbook.takeoff;

import java.util.Locale;
import java.util.regex.Pattern;

/** What the tool asks the price book for: a material and a trade size (may be empty). */
public record MaterialKey(String material, String size) implements Comparable<MaterialKey> {
  public MaterialKey {
    material = material.strip();
    size = size.strip();
  }

  /** Spaces, and inch marks whether drawn or written. */
  private static final Pattern INCHES =
      Pattern.compile("(?<=[0-9])\\s*in(ch(es)?)?\\b|[\\s\"”″]+", Pattern.CASE_INSENSITIVE);

  /** Returns the same key for two ways of writing a size: no case, spaces or inch marks. */
  public MaterialKey normal() {
    return new MaterialKey(normal(material), normal(size));
  }

  /** Returns a size or material as it is compared. */
  public static String normal(String text) {
    return INCHES.matcher(text).replaceAll("").toLowerCase(Locale.ROOT);
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
