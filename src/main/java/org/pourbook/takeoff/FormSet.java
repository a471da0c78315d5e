package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.measure.LumberSize;
import org.pourbook.takeoff.rule.BoardLength;
import org.pourbook.takeoff.rule.BoardPieces;
import org.pourbook.takeoff.rule.BoardStack;
import org.pourbook.takeoff.rule.FormBraces;
import org.pourbook.takeoff.rule.FormStakes;

/**
 * A run with what forms it: once for all sides of a section that are formed alike.
 *
 * @param sides how many sides
 * @param board length of one course along one side
 * @param pieces of one course along one side
 * @param joined all courses of one side; empty where no side is butted
 * @param butts of one side; of a closed run also where its ends meet
 * @param stakes of one side
 * @param braces of one side
 */
record FormSet(
    FormRun run,
    List<String> sides,
    BoardStack stack,
    Length board,
    List<Length> pieces,
    Optional<Joined> joined,
    int butts,
    Length stakeSpacing,
    int stakes,
    int braces) {

  static FormSet of(FormRun run, List<String> sides, FormLumber lumber, Practice practice) {
    BoardStack stack = lumber.stack(run.face());
    Length board = BoardLength.of(run.length(), stack.thickness(), run.end());
    Length shortest = practice.length(Setting.SHORTEST_BOARD);
    Length longest = lumber.longest(stack);
    List<Length> pieces = BoardPieces.of(board, longest, shortest);
    int butts = run.bend().isRound() ? pieces.size() : pieces.size() - 1;
    Length spacing =
        FormStakes.spacing(
            run.face(),
            practice.length(Setting.STAKE_SPACING),
            practice.length(Setting.STAKE_SPACING_HIGH));
    int stakes = FormStakes.count(run.length(), spacing, butts);
    int braces = FormBraces.count(run.face(), stakes);
    Optional<Joined> joined = joined(stack, board, pieces, shortest, longest);
    return new FormSet(run, sides, stack, board, pieces, joined, butts, spacing, stakes, braces);
  }

  private static Optional<Joined> joined(
      BoardStack stack, Length board, List<Length> pieces, Length shortest, Length longest) {
    if (pieces.size() == 1) {
      return Optional.empty();
    }
    Length least = pieces.stream().reduce(shortest, Length::min);
    int courses = stack.boards().size();
    return Optional.of(new Joined(board, pieces.size() - 1, Length.ZERO, least, longest, courses));
  }

  /** Returns the run of the courses of one size, empty where no side is butted. */
  Optional<Joined> joined(LumberSize size) {
    int of = FormRows.courses(this, size);
    return joined.map(run -> run.of(of, of < stack.boards().size()));
  }

  /** Returns how many boards stand one above the other. */
  int courses() {
    return stack.boards().size();
  }

  /** Returns how many sides there are in all sections alike. */
  int allSides() {
    return sides.size() * run.times();
  }

  /** Returns how much higher the boards are than the face; zero where they are not. */
  Length over() {
    return stack.height().minus(run.face()).max(Length.ZERO);
  }
}
