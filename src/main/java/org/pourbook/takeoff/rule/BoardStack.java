package org.pourbook.takeoff.rule;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.pourbook.measure.Length;
import org.pourbook.measure.LumberSize;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/**
 * The boards, one above the other, that form a face (FORM-2).
 *
 * @param boards widest first; one or more
 * @param cost of one metre of the stack, in the order of prices given; only compared
 */
public record BoardStack(List<LumberSize> boards, BigDecimal cost) {

  private static final Comparator<Board> SMALLEST =
      Comparator.comparing((Board board) -> board.size().width())
          .thenComparing(board -> board.size().thickness())
          .thenComparing(Board::price)
          .thenComparing(board -> board.size().designation());

  public BoardStack {
    boards = boards.stream().sorted(Comparator.comparing(LumberSize::width).reversed()).toList();
  }

  /** A board to choose from, with its price for one metre (zero when not priced). */
  public record Board(LumberSize size, BigDecimal price) {}

  /** Returns the height of all boards. */
  public Length height() {
    return boards.stream().map(LumberSize::width).reduce(Length.ZERO, Length::plus);
  }

  /** Returns the thickness of the thickest board. */
  public Length thickness() {
    return boards.stream()
        .map(LumberSize::thickness)
        .max(Comparator.naturalOrder())
        .orElse(Length.ZERO);
  }

  /**
   * Returns what a form board must reach: the face less the gap that is banked with earth; zero
   * where the gap is the higher.
   */
  @Source(
      rule = "FORM-2",
      says = "A form board reaches the height of the face less a gap at the bottom, banked",
      value = "3/4 in",
      standing = Standing.COMMON_PRACTICE)
  public static Length reach(Length face, Length gap) {
    return face.minus(gap).max(Length.ZERO);
  }

  /**
   * Returns the smallest board that reaches {@code reach}, or else of the stacks of fewest boards
   * the cheapest, at the same cost that of the least height over.
   *
   * @param boards at least one
   */
  @Source(
      rule = "FORM-2",
      says =
          "One board if any reaches the height, the smallest; else the fewest boards, then the least"
              + " cost, then the least over; boards count with their dressed width",
      value = "2x4 3-1/2, 2x6 5-1/2, 2x8 7-1/4, 2x10 9-1/4, 2x12 11-1/4 in",
      key = "ps20",
      at = "Table 3",
      standing = Standing.FROM_MEMORY)
  public static BoardStack reaching(Length reach, List<Board> boards) {
    List<Board> smallestFirst = boards.stream().sorted(SMALLEST).toList();
    Map<Length, BoardStack> byHeight =
        Map.of(Length.ZERO, new BoardStack(List.of(), BigDecimal.ZERO));
    for (int count = 1; ; count++) {
      TreeMap<Length, BoardStack> higher = withOneMore(byHeight, smallestFirst);
      Map<Length, BoardStack> enough = higher.tailMap(reach);
      if (!enough.isEmpty()) {
        return count == 1 ? enough.values().iterator().next() : cheapest(enough.values());
      }
      byHeight = higher;
    }
  }

  private static BoardStack cheapest(Collection<BoardStack> enough) {
    return enough.stream()
        .min(Comparator.comparing(BoardStack::cost).thenComparing(BoardStack::height))
        .orElseThrow();
  }

  /** Returns the cheapest stack of each height that one more board gives; at a tie the first. */
  private static TreeMap<Length, BoardStack> withOneMore(
      Map<Length, BoardStack> stacks, List<Board> boards) {
    TreeMap<Length, BoardStack> higher = new TreeMap<>();
    for (BoardStack stack : stacks.values()) {
      for (Board board : boards) {
        BoardStack next = stack.with(board);
        higher.merge(
            next.height(), next, (old, added) -> added.cost.compareTo(old.cost) < 0 ? added : old);
      }
    }
    return higher;
  }

  private BoardStack with(Board board) {
    List<LumberSize> all = new ArrayList<>(boards);
    all.add(board.size());
    return new BoardStack(all, cost.add(board.price()));
  }
}
