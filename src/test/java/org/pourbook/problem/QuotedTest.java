package org.pourbook.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class QuotedTest {

  @Test
  void aTextThatFitsIsRepeatedAsItIs() {
    assertEquals("24'-6 1/2\"", Quoted.of("24'-6 1/2\""));
    assertEquals("x".repeat(160), Quoted.of("x".repeat(160)));
  }

  @Test
  void aLongTextIsCut() {
    assertEquals("x".repeat(159) + "…", Quoted.of("x".repeat(161)));
  }

  @Test
  void whatWouldSteerATerminalIsASpace() {
    assertEquals("a [31mb  c", Quoted.of("a\u001b[31mb\r\nc"));
  }
}
