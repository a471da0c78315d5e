package org.pourbook.takeoff.rule;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** Forms of one pour used again in a later one (FORM-8). */
public final class FormReuse {

  private FormReuse() {}

  /** Like pieces. */
  public record Lot(Length length, int count) {}

  /** Returns whether forms of a pour may serve another: a later day, stripped by then. */
  @Source(
      rule = "FORM-8",
      says = "Forms serve a later pour when both are dated and they can be stripped between them",
      value = "strip after 1 day",
      key = "strip-time",
      standing = Standing.FROM_MEMORY)
  public static boolean isStripped(LocalDate poured, LocalDate next, double stripAfterDays) {
    long days = ChronoUnit.DAYS.between(poured, next);
    return days > 0 && days >= stripAfterDays;
  }

  /**
   * Returns what is left of like forms after a pour: ⌈count × loss⌉ of them are lost, and, to be
   * safe, the longest.
   */
  @Source(
      rule = "FORM-8",
      says = "Part of the forms is lost at each pour; screws, release and splices are new",
      value = "10 %",
      standing = Standing.COMMON_PRACTICE)
  public static List<Lot> kept(List<Lot> used, double lossPercent) {
    int all = used.stream().mapToInt(Lot::count).sum();
    int lost = (int) Math.ceil(Math.round(all * lossPercent / 100 * 1e9) / 1e9);
    List<Lot> kept = new ArrayList<>();
    for (Lot lot : longestFirst(used)) {
      int gone = Math.min(lost, lot.count());
      lost -= gone;
      kept.add(new Lot(lot.length(), lot.count() - gone));
    }
    return kept.stream().filter(lot -> lot.count() > 0).toList();
  }

  /**
   * Returns which used pieces serve which wanted ones, none longer than the used piece. The longest
   * wanted piece chooses first and takes the shortest used piece that serves it, so that as much
   * length as possible is used again.
   */
  @Source(
      rule = "FORM-8",
      says = "A used piece serves a piece no longer than itself, of the same size",
      standing = Standing.COMMON_PRACTICE)
  public static List<Served> serve(List<Lot> wanted, List<Lot> used) {
    List<Lot> shortestFirst = new ArrayList<>(longestFirst(used));
    Collections.reverse(shortestFirst);
    List<Served> served = new ArrayList<>();
    for (Lot want : longestFirst(wanted)) {
      int open = want.count();
      for (int i = 0; i < shortestFirst.size() && open > 0; i++) {
        Lot lot = shortestFirst.get(i);
        int taken = lot.length().isLessThan(want.length()) ? 0 : Math.min(open, lot.count());
        if (taken > 0) {
          served.add(new Served(want.length(), lot.length(), taken));
          shortestFirst.set(i, new Lot(lot.length(), lot.count() - taken));
          open -= taken;
        }
      }
    }
    return served;
  }

  /** So many wanted pieces served by used ones of a length. */
  public record Served(Length wanted, Length used, int count) {}

  private static List<Lot> longestFirst(List<Lot> lots) {
    return lots.stream().sorted(Comparator.comparing(Lot::length).reversed()).toList();
  }
}
