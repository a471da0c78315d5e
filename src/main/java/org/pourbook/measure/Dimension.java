package org.pourbook.measure;

/** What a unit measures; amounts of one dimension convert exactly into one another. */
public enum Dimension {
  /** Base unit m. */
  LENGTH,
  /** Base unit m2. */
  AREA,
  /** Base unit m3; liquids too. */
  VOLUME,
  /** Base unit kg. */
  MASS,
  /** Base unit one piece. */
  COUNT,
  /** Base unit hour. */
  TIME
}
