package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class PartsTest {

  @Test
  void aTableThatFitsIsOnePart() {
    assertEquals(Parts.ONE, Parts.of(0, 5, index -> true));
    assertEquals(Parts.ONE, Parts.of(5, 5, index -> true));
  }

  @Test
  void aLongTableIsCutWhereItIsFull() {
    assertEquals(List.of(0, 5, 10), Parts.of(11, 5, index -> true).starts());
  }

  @Test
  void aGroupStaysTogether() {
    // groups of 3: a part of 5 rows holds one of them
    Parts parts = Parts.of(9, 5, index -> index % 3 == 0);

    assertEquals(List.of(0, 3, 6), parts.starts());
    assertEquals(1, parts.partOf(3));
    assertEquals(1, parts.partOf(5));
    assertEquals(2, parts.within(5));
    assertEquals(6, parts.end(1, 9));
    assertEquals(9, parts.end(2, 9));
  }

  @Test
  void aGroupLongerThanASheetIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Parts.of(9, 5, index -> index == 0));
  }
}
