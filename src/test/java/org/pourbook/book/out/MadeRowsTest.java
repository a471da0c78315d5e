package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MadeRowsTest {

  private static final List<String> WORDS = List.of("", "ab", "", "", "c", "def", "");

  private final List<String> asked = new ArrayList<>();

  private List<Integer> letters(String word) {
    asked.add(word);
    return word.chars().boxed().toList();
  }

  private List<String> rows(List<String> words) {
    return MadeRows.of(words, this::letters, (word, letter) -> word + (char) letter.intValue());
  }

  @Test
  void eachItemOfEachRecordIsARowInTheirOrder() {
    List<String> rows = rows(WORDS);

    assertEquals(List.of("aba", "abb", "cc", "defd", "defe", "deff"), rows);
    assertEquals("defe", rows.get(4));
    assertEquals("abb", rows.get(1));
    assertEquals("cc", rows.get(2));
    assertThrows(IndexOutOfBoundsException.class, () -> rows.get(6));
    assertThrows(IndexOutOfBoundsException.class, () -> rows.get(-1));
  }

  @Test
  void thereMayBeNone() {
    assertEquals(List.of(), rows(List.of()));
    assertEquals(List.of(), rows(List.of("", "")));
  }

  @Test
  void itemsAreAskedForOnceWhereRowsAreTakenOneAfterTheOther() {
    List<String> rows = rows(WORDS);
    asked.clear();

    assertEquals(6, List.copyOf(rows).size());

    assertEquals(List.of("ab", "c", "def"), asked);
  }
}
