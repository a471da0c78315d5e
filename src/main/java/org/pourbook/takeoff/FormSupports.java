package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.FormPegs.Peg;
import org.pourbook.takeoff.FormRows.Sum;
import org.pourbook.takeoff.rule.FormBraces;
import org.pourbook.takeoff.rule.FormRelease;
import org.pourbook.takeoff.rule.FormScrews;
import org.pourbook.takeoff.rule.FormStakes;

/** What holds and coats one section's form boards (FORM-4 to FORM-7). */
final class FormSupports {

  private final Job job;
  private final Section section;
  private final List<FormSet> sets;
  private final FormPegs pegs;
  private final FormRows rows;
  private final Working working;
  private final List<FormPiece> pieces = new ArrayList<>();

  FormSupports(Job job, Section section, List<FormSet> sets, FormPegs pegs, FormRows rows) {
    this.job = job;
    this.section = section;
    this.sets = sets;
    this.pegs = pegs;
    this.rows = rows;
    this.working = new Working(job.units());
  }

  /** Adds the rows; returns the stakes and braces. */
  List<FormPiece> add() {
    stakes();
    braces();
    screws();
    release();
    return pieces;
  }

  private void stakes() {
    Length usual = job.practice().length(Setting.STAKE_LENGTH);
    byPeg(sets, set -> pegs.stake(FormStakes.length(set.run().face(), usual)))
        .forEach(
            (peg, of) ->
                pegs("stakes", peg, rows.counts(of, this::stakeTerm, FormSet::stakes), "FORM-4"));
  }

  private String stakeTerm(FormSet set) {
    String spaces =
        "⌈"
            + working.length(set.run().length())
            + " ÷ "
            + working.length(set.stakeSpacing())
            + "⌉ + 1";
    String all = set.butts() == 0 ? spaces : spaces + " + " + set.butts();
    return "(" + all + ")";
  }

  private void braces() {
    List<FormSet> braced = sets.stream().filter(set -> set.braces() > 0).toList();
    if (braced.isEmpty()) {
      return;
    }
    Length usual = job.practice().length(Setting.BRACE_LENGTH);
    byPeg(braced, set -> pegs.brace(FormBraces.length(set.run().face(), usual)))
        .forEach(
            (peg, of) ->
                pegs("braces", peg, rows.counts(of, this::braceTerm, FormSet::braces), "FORM-5"));
    Peg heel = pegs.stake(job.practice().length(Setting.STAKE_LENGTH));
    int braces = all(braced, FormSet::braces);
    pegs("heel stakes", heel, new Sum(braces, Unit.EACH, "one a brace"), "FORM-5");
  }

  private String braceTerm(FormSet set) {
    boolean every = set.braces() == set.stakes();
    return every ? String.valueOf(set.stakes()) : "⌈" + set.stakes() + " ÷ 2⌉";
  }

  private static Map<Peg, List<FormSet>> byPeg(List<FormSet> of, Function<FormSet, Peg> peg) {
    Map<Peg, List<FormSet>> map = new LinkedHashMap<>();
    of.forEach(set -> map.computeIfAbsent(peg.apply(set), key -> new ArrayList<>()).add(set));
    return map;
  }

  /** Adds stakes or braces as they are bought, or how many and what board they are cut from. */
  private void pegs(String what, Peg peg, Sum count, String rule) {
    String kind = what.endsWith("stakes") ? "stakes" : what;
    String named = what + ", " + working.small(peg.length()) + " long";
    String goesTo = section.code() + " " + what;
    int pieceCount = (int) count.amount();
    if (peg.cut()) {
      rows.tell(named, count, rule);
      Length all = peg.length().times(pieceCount);
      Unit unit = working.lengthUnit();
      double amount = unit == Unit.FT ? all.feet() : all.metres();
      String says = pieceCount + " × " + working.small(peg.length());
      String board = peg.material().size() + " for " + what;
      rows.buy(board, new Sum(amount, unit, says), peg.material(), rule);
    } else {
      rows.buy(named, count, peg.material(), rule);
    }
    pieces.add(
        new FormPiece(
            kind, peg.material(), peg.cut(), peg.length(), pieceCount, goesTo, section.pour()));
  }

  private void screws() {
    int stakes = all(sets, set -> set.stakes() * set.courses());
    int braces = all(sets, FormSet::braces);
    int splices = all(sets, set -> set.butts() * set.courses());
    int corners = all(sets, set -> set.run().end().isCorner() ? set.courses() : 0);
    String says = FormScrews.A_STAKE + " × " + stakes + " (stakes × boards)";
    says += braces == 0 ? "" : " + " + FormScrews.A_BRACE + " × " + braces + " braces";
    says += splices == 0 ? "" : " + " + FormScrews.A_SPLICE + " × " + splices + " splices";
    Sum sum = new Sum(FormScrews.count(stakes, braces, splices), Unit.EACH, says);
    rows.buy("form screws", sum, Material.FORM_SCREW.of("2-1/2 in"), "FORM-6");
    String atCorners = FormScrews.A_CORNER + " × " + corners + " (corners × boards)";
    Sum corner = new Sum(FormScrews.atCorners(corners), Unit.EACH, atCorners);
    rows.buy("form screws at corners", corner, Material.FORM_SCREW.of("3 in"), "FORM-6");
  }

  private static int all(List<FormSet> of, ToIntFunction<FormSet> count) {
    return of.stream().mapToInt(set -> set.allSides() * count.applyAsInt(set)).sum();
  }

  private void release() {
    double m2 = sets.stream().mapToDouble(FormSupports::contactM2).sum();
    Unit unit = Material.FORM_RELEASE.unit(job.units());
    String faces =
        rows.sum(
            sets,
            set -> working.length(set.run().length()) + " × " + working.small(set.run().face()));
    String covers =
        job.units().isMetric()
            ? Working.number(FormRelease.m2ALitre()) + " m2/L"
            : FormRelease.FT2_A_GALLON + " ft2/gal";
    String says = "(" + faces + ") ÷ " + covers;
    Sum sum = new Sum(unit.fromBase(FormRelease.volumeM3(m2)), unit, says);
    rows.buy("form release", sum, Material.FORM_RELEASE.of(""), "FORM-7");
  }

  private static double contactM2(FormSet set) {
    return set.run().length().metres() * set.run().face().metres() * set.allSides();
  }
}
