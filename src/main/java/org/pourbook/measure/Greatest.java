package org.pourbook.measure;

import java.math.BigDecimal;

/**
 * The greatest amounts that one cell of an input may hold. They are far beyond any slab's, so that
 * whoever passes one has slipped, and small enough that products of two of them, and sums of such
 * products over a sheet, are counted exactly in a {@code long}.
 */
public final class Greatest {

  /**
   * A price, a fee, or an amount of a bill: of a currency of which a dollar buys a million, a pump
   * is hundreds of millions and a floor's concrete thousands of them.
   */
  public static final BigDecimal MONEY = BigDecimal.valueOf(10_000_000_000L);

  /** How many or how much of one thing. */
  public static final BigDecimal QUANTITY = BigDecimal.valueOf(1_000_000);

  /** How many sections or walls alike, people, or pours. */
  public static final BigDecimal COUNT = BigDecimal.valueOf(10_000);

  public static final BigDecimal DAYS = BigDecimal.valueOf(1_000);

  /** A length in a plan, or of stock. */
  public static final Length LENGTH = Length.ofFeet(6_000);

  /** X or Y of a place in a plan, which may be drawn in a surveyor's grid. */
  public static final Length PLACE = Length.ofFeet(50_000);

  /** A thickness, a depth, a height, a bar. */
  public static final Length DEPTH = Length.ofFeet(150);

  /** A face that boards form; higher ones are walls, formed in another way. */
  public static final Length FORM = Length.ofFeet(10);

  /** All sides of a section and those alike, or walls alike: a million feet [m]. */
  public static final double RUN_M = Unit.FT.toBase(1_000_000);

  /** Plan area of a section and those alike: a million square feet [m2]. */
  public static final double AREA_M2 = Unit.FT2.toBase(1_000_000);

  /** Concrete of a section and those alike: ten thousand cubic yards [m3]. */
  public static final double VOLUME_M3 = Unit.YD3.toBase(10_000);

  /** Pieces, packs or rolls of one material in a size, of one job. */
  public static final BigDecimal PIECES = BigDecimal.valueOf(2_000_000);

  /** Pieces, packs or rolls of all jobs of a batch, which an {@code int} still counts. */
  public static final BigDecimal BATCH_PIECES = BigDecimal.valueOf(1_000_000_000);

  /** Boards and bars of all jobs of a batch, whose nanometres a {@code long} still counts [m]. */
  public static final BigDecimal BATCH_M = BigDecimal.valueOf(1_000_000_000);

  /** What one material in a size, or one row of a bill, may come to, at its dearest. */
  public static final BigDecimal LINE = BigDecimal.valueOf(100_000_000_000L);

  /**
   * What all jobs of a batch may come to: tax and rounding are at most as much again, and nine
   * times as much still fits a {@code long} of millionths.
   */
  public static final BigDecimal BATCH = BigDecimal.valueOf(1_000_000_000_000L);

  private Greatest() {}
}
