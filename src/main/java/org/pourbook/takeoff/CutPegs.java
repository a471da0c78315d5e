package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.pourbook.measure.Length;
import org.pourbook.measure.LumberSize;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;

/** Stakes and braces that were to be bought and are cut from a board instead (FORM-4, FORM-5). */
public final class CutPegs {

  private static final String STAKES = "FORM-4";
  private static final String BRACES = "FORM-5";

  private final TakeOff takeOff;
  private final MaterialKey board;
  private final Working working;

  private CutPegs(TakeOff takeOff, MaterialKey board) {
    this.takeOff = takeOff;
    this.board = board;
    this.working = new Working(takeOff.job().units());
  }

  /** Pegs of one material for one pour, which rows of Takeoff are about. */
  private record Row(MaterialKey material, int pour) {}

  /** Returns the board that pegs are cut from: 2x4, in a metric job 38x89 first, if it is sold. */
  public static Optional<MaterialKey> board(UnitSystem units, OnOffer onOffer) {
    return FormLumber.twoByFour(units, onOffer).map((LumberSize size) -> FormLumber.key(size));
  }

  /** Returns so many of the pegs, the shortest first, which are the easiest to cut. */
  public static List<PieceNeed> shortest(List<PieceNeed> pegs, int count) {
    List<PieceNeed> some = new ArrayList<>();
    int open = count;
    List<PieceNeed> shortestFirst =
        pegs.stream().sorted(Comparator.comparing(PieceNeed::length)).toList();
    for (PieceNeed peg : shortestFirst) {
      int taken = Math.min(open, peg.count());
      if (taken > 0) {
        some.add(withCount(peg, taken));
      }
      open -= taken;
    }
    return some;
  }

  /** Returns so many of the same pegs. */
  public static PieceNeed withCount(PieceNeed peg, int count) {
    return new PieceNeed(peg.material(), peg.length(), count, peg.goesTo(), peg.mark(), peg.pour());
  }

  /** Returns pegs as pieces of a board. */
  public static PieceNeed ofBoard(PieceNeed peg, MaterialKey board) {
    return new PieceNeed(board, peg.length(), peg.count(), peg.goesTo(), peg.mark(), peg.pour());
  }

  /**
   * Returns a take-off in which some pegs are no longer bought but cut from a board: Takeoff takes
   * them out of what is bought and adds their lengths to the boards, and a caution says so.
   *
   * @param cut of {@link TakeOff#pegs}, with how many of each
   */
  public static TakeOff of(TakeOff takeOff, MaterialKey board, List<PieceNeed> cut) {
    return cut.isEmpty() ? takeOff : new CutPegs(takeOff, board).with(cut);
  }

  private TakeOff with(List<PieceNeed> cut) {
    List<Quantity> quantities = new ArrayList<>(takeOff.quantities());
    List<PieceNeed> pieces = new ArrayList<>(takeOff.pieces());
    List<Caution> cautions = new ArrayList<>(takeOff.cautions());
    Map<Row, List<PieceNeed>> rows = new LinkedHashMap<>();
    for (PieceNeed peg : cut) {
      rows.computeIfAbsent(new Row(peg.material(), peg.pour()), k -> new ArrayList<>()).add(peg);
      pieces.add(ofBoard(peg, board));
    }
    rows.forEach(
        (row, of) -> {
          quantities.add(notBought(row, of));
          quantities.add(ofBoard(row, of));
        });
    rows.keySet().stream()
        .map(Row::material)
        .distinct()
        .forEach(material -> cautions.add(caution(material, cut)));
    return new TakeOff(
        takeOff.job(),
        quantities,
        pieces,
        without(cut),
        takeOff.concrete(),
        takeOff.boltPieces(),
        takeOff.barMarks(),
        takeOff.joints(),
        cautions,
        takeOff.ready(),
        takeOff.strips());
  }

  private List<PieceNeed> without(List<PieceNeed> cut) {
    Map<PieceNeed, Integer> gone = new LinkedHashMap<>();
    cut.forEach(peg -> gone.merge(withCount(peg, 1), peg.count(), Integer::sum));
    List<PieceNeed> left = new ArrayList<>();
    for (PieceNeed peg : takeOff.pegs()) {
      PieceNeed one = withCount(peg, 1);
      int taken = Math.min(peg.count(), gone.getOrDefault(one, 0));
      gone.merge(one, -taken, Integer::sum);
      if (peg.count() > taken) {
        left.add(withCount(peg, peg.count() - taken));
      }
    }
    if (gone.values().stream().anyMatch(open -> open > 0)) {
      throw new IllegalArgumentException("pegs are cut that are not needed: " + gone);
    }
    return left;
  }

  private Quantity notBought(Row row, List<PieceNeed> pegs) {
    int count = count(pegs);
    return Quantity.of(
        "",
        what(row.material()) + " cut from " + board.size() + ", not bought",
        -count,
        Unit.EACH,
        "−(" + says(pegs) + ") = −" + count,
        rule(row.material()),
        row.material(),
        row.pour());
  }

  private Quantity ofBoard(Row row, List<PieceNeed> pegs) {
    Unit unit = working.lengthUnit();
    Length all =
        pegs.stream().map(peg -> peg.length().times(peg.count())).reduce(Length.ZERO, Length::plus);
    double amount = unit == Unit.FT ? all.feet() : all.metres();
    return Quantity.of(
        "",
        board.size() + " for " + what(row.material()) + " that are not bought",
        amount,
        unit,
        says(pegs) + " = " + Working.number(amount) + " " + unit.label(),
        rule(row.material()),
        board,
        row.pour());
  }

  private String says(List<PieceNeed> pegs) {
    Map<Length, Integer> byLength = new TreeMap<>(Comparator.reverseOrder());
    pegs.forEach(peg -> byLength.merge(peg.length(), peg.count(), Integer::sum));
    return byLength.entrySet().stream()
        .map(some -> some.getValue() + " × " + working.small(some.getKey()))
        .collect(Collectors.joining(" + "));
  }

  private Caution caution(MaterialKey material, List<PieceNeed> cut) {
    int count = count(cut.stream().filter(peg -> peg.material().equals(material)).toList());
    String says =
        material
            + ": "
            + count
            + (count == 1 ? " is" : " are")
            + " cut with the boards from "
            + board
            + ", which costs less than to buy "
            + (count == 1 ? "it." : "them.");
    return new Caution(
        "",
        isStake(material) ? says + " What is cut has no point yet: make one." : says,
        rule(material));
  }

  private static int count(List<PieceNeed> pegs) {
    return pegs.stream().mapToInt(PieceNeed::count).sum();
  }

  private static boolean isStake(MaterialKey material) {
    return Material.named(material.material()).equals(Optional.of(Material.STAKE));
  }

  private static String what(MaterialKey material) {
    return isStake(material) ? "stakes" : "braces";
  }

  private static String rule(MaterialKey material) {
    return isStake(material) ? STAKES : BRACES;
  }
}
