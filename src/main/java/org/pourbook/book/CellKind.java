package org.pourbook.book;

/** What a cell of an input column holds. */
public enum CellKind {
  TEXT,
  /** A short code; 1 in a numeric cell equals the text {@code 1}. */
  CODE,
  /** One of the column's choices. */
  CHOICE,
  YES_NO,
  DATE,
  TIME,
  NUMBER,
  /** A whole number. */
  COUNT,
  /** 5, {@code 5%}, or a cell formatted as a percentage. */
  PERCENT,
  MONEY,
  /** A length in any notation; a bare number is in the column's unit. */
  LENGTH,
  /** A trade size, e.g. {@code #4}, {@code 3000 psi}, {@code 1/2 x 10}. */
  SIZE,
  /** Mat bars, e.g. {@code #4 @ 16 EW}. */
  BARS,
  /** Bars along a run, e.g. {@code 2 #4}. */
  BAR_RUN,
  /** Sides of a section, e.g. {@code 2L+W}. */
  SIDES,
  /** A length, or a word: {@code none} for joint spacing, {@code yes} for embedment. */
  LENGTH_OR_WORD
}
