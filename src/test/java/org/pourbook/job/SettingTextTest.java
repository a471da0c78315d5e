package org.pourbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pourbook.measure.Length;
import org.pourbook.measure.UnitSystem;

/** What a setting may be, and in which unit it is held. */
class SettingTextTest {

  private static Optional<SettingValue> read(Setting setting, String text, UnitSystem bare) {
    return SettingText.read(setting, text, bare, bare, "Practice!C2");
  }

  private static Optional<SettingValue> us(Setting setting, String text) {
    return read(setting, text, UnitSystem.FT_IN);
  }

  private static double number(Setting setting, String text, UnitSystem bare) {
    return read(setting, text, bare).orElseThrow().number();
  }

  /** At the ends of each range, and just beyond. */
  @ParameterizedTest
  @CsvSource({
    "WASTE_ALLOWANCE, 0, true",
    "WASTE_ALLOWANCE, 100 %, true",
    "WASTE_ALLOWANCE, 100.1, false",
    "WASTE_ALLOWANCE, -1, false",
    "ORDER_CONFIDENCE, 50, true",
    "ORDER_CONFIDENCE, 49.9, false",
    "ORDER_CONFIDENCE, 99.9, true",
    "ORDER_CONFIDENCE, 100, false",
    "ORDER_STEP, 0, false",
    "ORDER_STEP, 0.01, true",
    "LOAD_SIZE, 0, false",
    "PUMP_LOSS, 0, true",
    "NORTH, 0, true",
    "NORTH, 360, true",
    "NORTH, 361, false",
    "STRIP_AFTER, 0, true",
    "STRIP_AFTER, 2 days, true",
    "STRIP_AFTER, 1 day, true",
    "STRIP_AFTER, 1.5, false",
    "BAR_GRADE, 0, false",
    "BAR_GRADE, 60, true",
    "BAR_GRADE, 60.5, false",
    "SPARE_PIECES, 999999999, false",
    "BASE, 0, true",
    "STAKE_SPACING, 0, false",
    "STAKE_SPACING, -3, false",
    "SAW_KERF, 1, true",
    "SAW_KERF, 1-1/16, false",
    "CUT_STEP, 2, false",
    "CUT_STEP, 0, false",
    "STAKE_LENGTH, 24, true",
    "VAPOR_RETARDER, yes, true",
    "VAPOR_RETARDER, perhaps, false",
    "BASE_MATERIAL, Sand, true",
    "BASE_MATERIAL, gold, false",
    "RETARDER, '', false",
    "START, 6:30, true",
    "START, 25:00, false"
  })
  void aSettingHasARange(Setting setting, String text, boolean taken) {
    assertEquals(taken, us(setting, text).isPresent());
  }

  /** 1 yd3 = 0.764554857984 m3 exactly (27 × 0.3048³). */
  @Test
  void volumesAndRatesAreHeldInCubicMetres() {
    assertEquals(7.64554857984, number(Setting.LOAD_SIZE, "10", UnitSystem.FT_IN), 1e-12);
    assertEquals(10, number(Setting.LOAD_SIZE, "10", UnitSystem.M));
    assertEquals(7.64554857984, number(Setting.LOAD_SIZE, "10 yd3", UnitSystem.M), 1e-12);
    assertEquals(10, number(Setting.LOAD_SIZE, "10 m3", UnitSystem.FT_IN));
    assertEquals(
        15 * 0.764554857984, number(Setting.PLACING_RATE_CHUTE, "15", UnitSystem.FT_IN), 1e-12);
  }

  /** 1 MPa = 145.0377 psi (1 lbf = 4.4482216152605 N, 1 in = 25.4 mm). */
  @Test
  void strengthIsHeldInPsi() {
    assertEquals(3000, number(Setting.STRENGTH_PSI, "3000 psi", UnitSystem.M));
    double psi = 25 / (4.4482216152605 / (25.4 * 25.4));
    assertEquals(psi, number(Setting.STRENGTH_PSI, "25", UnitSystem.M), 1e-9);
    assertEquals(psi, number(Setting.STRENGTH_PSI, "25 MPa", UnitSystem.FT_IN), 1e-9);
  }

  @Test
  void aLengthIsShownInTheJobsUnit() {
    SettingValue spacing = us(Setting.STAKE_SPACING, "30 in").orElseThrow();
    assertEquals(Optional.of(Length.ofInches(30)), spacing.length());
    assertEquals("2.5 ft", spacing.shown() + " " + spacing.unit());
    SettingValue cover = read(Setting.EDGE_COVER, "75", UnitSystem.M).orElseThrow();
    assertEquals(Optional.of(Length.ofMillimetres(75)), cover.length());
    assertEquals("75 mm", cover.shown() + " " + cover.unit());
  }

  @ParameterizedTest
  @CsvSource({
    "class B, FT_IN, class b",
    "40 db, FT_IN, 40 db",
    "40db, M, 40db",
    "24, FT_IN, 24 in",
    "600, M, 600 mm",
    "2', FT_IN, 2'"
  })
  void aLapIsAClassDiametersOrALength(String text, UnitSystem bare, String shown) {
    assertEquals(shown, read(Setting.LAP_RULE, text, bare).orElseThrow().shown());
  }

  @Test
  void aLapIsLongerThanNothing() {
    assertEquals(Optional.empty(), us(Setting.LAP_RULE, "0"));
    assertEquals(Optional.empty(), us(Setting.LAP_RULE, "class C"));
  }

  @ParameterizedTest
  @CsvSource({"yes, yes, 1", "X, yes, 1", "true, yes, 1", "No, no, 0", "n, no, 0", "false, no, 0"})
  void yesAndNoHaveSeveralWords(String text, String shown, double number) {
    SettingValue value = us(Setting.SEAL_JOINTS, text).orElseThrow();
    assertEquals(shown, value.shown());
    assertEquals(number, value.number());
  }

  @Test
  void everyDefaultIsOneThatMayBeWritten() {
    for (UnitSystem shown : UnitSystem.values()) {
      SettingValues.usual(shown)
          .forEach((setting, value) -> assertEquals(setting.usual().isEmpty(), value.isByRule()));
    }
    SettingValue load =
        Objects.requireNonNull(SettingValues.usual(UnitSystem.M).get(Setting.LOAD_SIZE));
    assertEquals("7.6455 m3", load.shown() + " " + load.unit());
    assertEquals(7.64554857984, load.number(), 1e-12);
    assertEquals("default (CON-8, from memory)", load.source());
  }
}
