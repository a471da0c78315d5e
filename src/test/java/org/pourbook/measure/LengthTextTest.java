package org.pourbook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Every notation of a length that the workbooks allow, and what is none. */
class LengthTextTest {

  private final Locale usual = Locale.getDefault();

  @AfterEach
  void backToTheUsualLocale() {
    Locale.setDefault(usual);
  }

  private static void all(String inches, Unit bare, List<String> texts) {
    for (String text : texts) {
      assertEquals(
          Optional.of(Length.ofInches(new BigDecimal(inches))),
          LengthText.read(text, bare),
          "\"" + text + "\"");
    }
  }

  /** 24 ft 6-1/2 in is 294.5 in. */
  @Test
  void feetAndInchesAreReadHoweverTheyAreMarked() {
    all(
        "294.5",
        Unit.FT,
        List.of(
            "24'-6 1/2\"",
            "24'-6-1/2\"",
            "24' 6.5\"",
            "24'6.5",
            "24'6 1/2",
            "24 ft 6.5 in",
            "24 ft. 6 1/2 in.",
            "24ft 6-1/2in",
            "24 feet 6.5 inches",
            "24’-6 1/2”",
            "24′ 6.5″",
            " 24' - 6 1/2\" "));
    all("294", Unit.FT, List.of("24'6", "24'-6\"", "24 ft 6 in", "24.5", "24.5'", "294\""));
    all("6", Unit.FT, List.of("6\"", "6 in", "0'-6\"", "0.5", "1/2'"));
    all("14826", Unit.FT, List.of("1,235.5", "1,235'-6\""));
  }

  @Test
  void aBareNumberIsInTheUnitOfItsColumn() {
    all("4.5", Unit.IN, List.of("4.5", "4 1/2", "4-1/2", "4 1/2\""));
    assertEquals(
        Optional.of(Length.ofMillimetres(3200)),
        LengthText.read("3.2", Unit.M),
        "metres where the column is of metres");
    assertEquals(Optional.of(Length.ofMillimetres(150)), LengthText.read("150", Unit.MM));
  }

  @Test
  void metricLengthsAreReadInEveryColumn() {
    for (Unit bare : List.of(Unit.FT, Unit.IN, Unit.M, Unit.MM)) {
      for (String text : List.of("150 mm", "150mm", "15 cm", "0.15 m", ".15 m", "150 MM")) {
        assertEquals(Optional.of(Length.ofMillimetres(150)), LengthText.read(text, bare), text);
      }
    }
  }

  @Test
  void whatIsNoLengthIsNone() {
    for (String text :
        List.of(
            "",
            "four",
            "24,5",
            "1.234,50",
            "24'-12\"",
            "24'-13\"",
            "6 1/0",
            "#REF!",
            "NaN",
            "1e9",
            "--4",
            "4\" 6'",
            "12 yd",
            "1,2345",
            "24 x 6")) {
      assertEquals(Optional.empty(), LengthText.read(text, Unit.FT), "\"" + text + "\"");
    }
    assertEquals(Optional.empty(), LengthText.read("1/2", Unit.M), "no fraction of a metre");
  }

  @Test
  void theMachinesLocaleChangesNothing() {
    Locale.setDefault(Locale.GERMANY);
    all("294.5", Unit.FT, List.of("24' 6.5\"", "24 FT 6.5 IN"));
    assertEquals(Optional.empty(), LengthText.read("24,5", Unit.FT));
    Locale.setDefault(Locale.forLanguageTag("tr"));
    all("6", Unit.FT, List.of("6 IN", "6 INCHES"));
  }
}
