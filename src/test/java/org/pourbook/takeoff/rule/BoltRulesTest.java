package org.pourbook.takeoff.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pourbook.measure.BoltSize;
import org.pourbook.measure.Length;

class BoltRulesTest {

  private static final Length HALF = Length.ofInches(1, 2);
  private static final Length NINE = Length.ofInches(9);

  @ParameterizedTest
  @CsvSource({"16, 16", "20, 16 4", "18, 9 9", "35, 16 9.5 9.5", "48, 16 16 16", "2, 2"})
  void aShortLastPieceAndTheOneBeforeAreMadeEqual(long feet, String pieces) {
    List<Length> expected =
        Arrays.stream(pieces.split(" ")).map(BigDecimal::new).map(Length::ofFeet).toList();
    assertEquals(expected, PlatePieces.of(Length.ofFeet(feet), Length.ofFeet(16)));
  }

  @Test
  void piecesAreTogetherExactlyAsLongAsThePlate() {
    Length odd = Length.ofFeet(17).plus(new Length(1));
    List<Length> pieces = PlatePieces.of(odd, Length.ofFeet(16));
    assertEquals(odd, pieces.get(0).plus(pieces.get(1)));
  }

  /** Hand figures: end distance min(9, max(3-1/2, P ÷ 4)), then ⌈(P − 2e) ÷ s⌉ + 1. */
  @ParameterizedTest
  @CsvSource({
    "12, 48, ''",
    "13, 48, 6.5",
    "23.5, 48, 11.75",
    "24, 48, 6 18",
    "30, 48, 7.5 22.5",
    "36, 48, 9 27",
    "66, 48, 9 57",
    "66.25, 48, 9 33.125 57.25",
    "114, 48, 9 57 105"
  })
  void boltsStandEvenlyBetweenTheEnds(BigDecimal piece, long spacing, String at) {
    List<Length> expected =
        at.isEmpty()
            ? List.of()
            : Arrays.stream(at.split(" ")).map(BigDecimal::new).map(Length::ofInches).toList();
    assertEquals(
        expected,
        BoltLayout.positions(Length.ofInches(piece), HALF, NINE, Length.ofInches(spacing)));
  }

  @Test
  void endBoltsThatWouldMeetStandAtTheQuarters() {
    Length piece = Length.ofInches(26);
    Length thick = Length.ofInches(2);
    Length far = Length.ofInches(15);
    assertEquals(Length.ofInches(13, 2), BoltLayout.endDistance(piece, thick, far));
  }

  @Test
  void sparesAreAtLeastTwoOfASize() {
    assertEquals(2, SpareBolts.count(1, 5));
    assertEquals(2, SpareBolts.count(40, 5));
    assertEquals(3, SpareBolts.count(41, 5));
    assertEquals(3, SpareBolts.count(60, 5));
    assertEquals(0, SpareBolts.count(0, 5));
    assertEquals(0, SpareBolts.count(40, 0));
  }

  @Test
  void theShortestPassingBoltIsNoThinnerThanTheOneAskedFor() {
    List<BoltSize> onOffer =
        List.of(bolt("5/8 x 12"), bolt("1/2 x 10"), bolt("5/8 x 10"), bolt("5/8 x 8"));
    assertEquals(
        List.of(bolt("5/8 x 10"), bolt("5/8 x 12")),
        BoltLimits.passing(onOffer, bolt("5/8 x 8"), Length.ofInches(5, 2)));
  }

  private static BoltSize bolt(String name) {
    return BoltSize.named(name).orElseThrow();
  }

  /** A text with sizes that no length holds is no bolt, like any other text. */
  @Test
  void aBoltBeyondAnyLengthIsNone() {
    for (String size :
        List.of(
            "999999999999 x 9999999999999",
            "1e999999999 x 1e999999999",
            "1/2 x 1E99",
            "M12 x 9999999999999999")) {
      assertEquals(Optional.empty(), BoltSize.named(size), size);
    }
  }
}
