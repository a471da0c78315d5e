package org.pourbook.measure;

import java.util.Optional;

/**
 * An anchor bolt: {@code 1/2 x 10} (inches) or {@code M12 x 250} (mm).
 *
 * @param diameterName the trade size of its nut and washer: {@code 1/2}, {@code M12}
 */
public record BoltSize(String designation, String diameterName, Length diameter, Length length) {

  /** Returns the bolt of that designation; inch marks, spaces and case do not matter. */
  public static Optional<BoltSize> named(String designation) {
    String[] parts = designation.strip().split("[xX×]");
    if (parts.length != 2) {
      return Optional.empty();
    }
    String diameter = parts[0].replace("\"", "").strip();
    String length = parts[1].replace("\"", "").strip();
    try {
      if (diameter.startsWith("M") || diameter.startsWith("m")) {
        long mm = Long.parseLong(diameter.substring(1).strip());
        long lengthMm = Long.parseLong(length.replace("mm", "").strip());
        String name = "M" + mm;
        return sound(
            new BoltSize(
                name + " x " + lengthMm,
                name,
                Length.ofMillimetres(mm),
                Length.ofMillimetres(lengthMm)));
      }
      return sound(
          new BoltSize(
              diameter + " x " + length,
              diameter,
              Fractions.inches(diameter),
              Fractions.inches(length)));
    } catch (NumberFormatException | ArithmeticException e) {
      return Optional.empty();
    }
  }

  private static Optional<BoltSize> sound(BoltSize bolt) {
    return bolt.diameter.isPositive() && bolt.length.isMoreThan(bolt.diameter)
        ? Optional.of(bolt)
        : Optional.empty();
  }

  @Override
  public String toString() {
    return designation;
  }
}
