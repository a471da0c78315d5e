package org.pourbook.ticket;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/**
 * Something on the tickets or bills that the bookkeeper should take up.
 *
 * @param says what was found beside what was to be expected, and what to ask the supplier
 * @param money what it costs the builder; empty when none
 */
public record Finding(
    String job,
    String supplier,
    String ticket,
    String invoice,
    Optional<LocalDate> day,
    MaterialKey key,
    Name name,
    String says,
    Optional<Money> money) {

  /** Dearest first, those without money last, then by every field, so that order is the same. */
  public static final Comparator<Finding> DEAREST_FIRST =
      Comparator.comparing((Finding finding) -> finding.money().isEmpty())
          .thenComparing(finding -> finding.money().orElse(Money.ZERO), Comparator.reverseOrder())
          .thenComparing(Finding::job)
          .thenComparing(Finding::supplier)
          .thenComparing(Finding::ticket)
          .thenComparing(Finding::invoice)
          .thenComparing(Finding::key)
          .thenComparing(Finding::name)
          .thenComparing(Finding::says);

  /** What kinds of findings there are. */
  public enum Name {
    DOUBLED_TICKET("doubled ticket"),
    LATE_DISCHARGE("late discharge"),
    WRONG_EXTENSION("wrong extension"),
    SHORT_LOAD_NOT_DUE("short-load fee not due"),
    NOT_ORDERED("not ordered"),
    NOT_DELIVERED("not delivered"),
    OVER_QUANTITY("over quantity"),
    UNDER_QUANTITY("under quantity"),
    PRICE_DIFFERS("price differs"),
    WATER_ADDED("water added"),
    WAITING_CHARGED("waiting charged"),
    FEE_NOT_LISTED("fee not listed");

    private final String label;

    Name(String label) {
      this.label = label;
    }

    public String label() {
      return label;
    }
  }
}
