package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pourbook.job.Job;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.measure.LumberSize;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.rule.BoardStack;
import org.pourbook.takeoff.rule.BoardStack.Board;

/** The boards a job's forms may be made of, and which of them form a face (FORM-2). */
final class FormLumber {

  /** Thinner boards do not span from stake to stake; they serve only where nothing else is sold. */
  static final Length LEAST_THICKNESS = Length.ofInches(5, 4);

  private static final List<String> USUAL = List.of("2x4", "2x6", "2x8", "2x10", "2x12");
  private static final List<String> USUAL_METRIC =
      List.of("38x89", "38x140", "38x184", "38x235", "38x286");

  /** The longest board to be had where the price book says nothing. */
  private static final Length USUAL_LONGEST = Length.ofFeet(16);

  private final UnitSystem units;
  private final Practice practice;
  private final OnOffer onOffer;
  private final List<Board> boards;

  FormLumber(Job job, OnOffer onOffer) {
    this.units = job.units();
    this.practice = job.practice();
    this.onOffer = onOffer;
    this.boards = boards();
  }

  private List<Board> boards() {
    List<LumberSize> sold =
        sizes(onOffer.sizes(Material.FORM_BOARD.label()).stream()).distinct().toList();
    List<LumberSize> strong = sold.stream().filter(size -> !isThin(size)).toList();
    List<LumberSize> chosen = strong.isEmpty() ? sold : strong;
    List<LumberSize> boards =
        chosen.isEmpty()
            ? sizes((units.isMetric() ? USUAL_METRIC : USUAL).stream()).toList()
            : chosen;
    return boards.stream().map(size -> new Board(size, price(size))).toList();
  }

  private static Stream<LumberSize> sizes(Stream<String> names) {
    return names.map(LumberSize::named).flatMap(Optional::stream);
  }

  static boolean isThin(LumberSize size) {
    return size.thickness().isLessThan(LEAST_THICKNESS);
  }

  private BigDecimal price(LumberSize size) {
    return onOffer.leastPrice(key(size)).orElse(BigDecimal.ZERO);
  }

  static MaterialKey key(LumberSize size) {
    return Material.FORM_BOARD.of(size.designation());
  }

  /**
   * Returns the boards that form a face: of the job's own system (inch or metric boards) where one
   * of these reaches it or none of the others does.
   */
  BoardStack stack(Length face) {
    Length reach = BoardStack.reach(face, practice.length(Setting.FORM_GAP));
    List<Board> own =
        boards.stream().filter(board -> isMetric(board.size()) == units.isMetric()).toList();
    if (own.isEmpty()) {
      return BoardStack.reaching(reach, boards);
    }
    BoardStack ofOwn = BoardStack.reaching(reach, own);
    BoardStack ofAll = BoardStack.reaching(reach, boards);
    return ofAll.boards().size() == 1 && ofOwn.boards().size() > 1 ? ofAll : ofOwn;
  }

  private static boolean isMetric(LumberSize size) {
    return size.thickness().nanometres() % Length.MM_NM == 0;
  }

  /**
   * Returns the longest board to be had in every size of a stack, so that its courses are cut
   * alike; down to the cut step, for a board that long to come out of a stock piece (CUT-1).
   */
  Length longest(BoardStack stack) {
    Length step =
        practice
            .value(Setting.CUT_STEP)
            .length()
            .orElse(units.isMetric() ? Length.ofMillimetres(1) : Length.ofInches(1, 16));
    return stack.boards().stream()
        .map(size -> onOffer.longestStock(key(size)).orElse(USUAL_LONGEST))
        .reduce(Length::min)
        .orElse(USUAL_LONGEST)
        .roundedDownTo(step);
  }

  /** Returns the board from which stakes and braces are cut, if it is sold. */
  Optional<LumberSize> twoByFour() {
    return twoByFour(units, onOffer);
  }

  static Optional<LumberSize> twoByFour(UnitSystem units, OnOffer onOffer) {
    List<String> names = units.isMetric() ? List.of("38x89", "2x4") : List.of("2x4", "38x89");
    return sizes(names.stream()).filter(size -> onOffer.has(key(size))).findFirst();
  }

  /** Returns the trade size asked for where no 2x4 is sold. */
  String usualTwoByFour() {
    return units.isMetric() ? "38x89" : "2x4";
  }

  /** Returns the price of so much of a board, if it has one. */
  Optional<BigDecimal> price(LumberSize size, Length length) {
    return onOffer
        .leastPrice(key(size))
        .map(perMetre -> perMetre.multiply(BigDecimal.valueOf(length.metres())));
  }
}
