package org.pourbook.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class RemnantsTest {

  private static CutModel boardsOf16(long[] width, int... demand) {
    return new CutModel(width, demand, new long[] {16}, new long[] {5}, new int[] {4});
  }

  private static Packing packing(CutModel model, int[]... boards) {
    return Packing.of(
        model,
        Arrays.stream(boards).map(counts -> new Packing.Lot(Column.of(0, counts), 1)).toList());
  }

  /** What is cut from each board: items, then how many of each. */
  private static List<String> boards(Packing packing) {
    return packing.lots().stream()
        .map(
            lot ->
                Arrays.toString(lot.column().item()) + " " + Arrays.toString(lot.column().count()))
        .toList();
  }

  @Test
  void aPieceMovesToTheBoardThatHoldsIt() {
    CutModel model = boardsOf16(new long[] {10, 3}, 2, 2);
    Packing gathered = Remnants.gathered(model, packing(model, new int[] {1, 1}, new int[] {1, 1}));
    assertEquals(List.of("[0, 1] [1, 2]", "[0] [1]"), boards(gathered));
    assertEquals(6, gathered.longestRest());
  }

  @Test
  void twoPiecesChangeWhereNoneCanMove() {
    // 9 + 4 and 8 + 6 leave 3 and 2; with 9 and 8 changed 4 and 1.
    CutModel model = boardsOf16(new long[] {9, 8, 6, 4}, 1, 1, 1, 1);
    Packing given = packing(model, new int[] {1, 0, 0, 1}, new int[] {0, 1, 1, 0});
    assertEquals(
        List.of("[0, 2] [1, 1]", "[1, 3] [1, 1]"), boards(Remnants.gathered(model, given)));
  }
}
