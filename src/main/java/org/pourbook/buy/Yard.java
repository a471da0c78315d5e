package org.pourbook.buy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pourbook.cut.CutResult;
import org.pourbook.job.Job;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.MaterialKey;

/** What lies in the builder's yard before and after the cutting. */
final class Yard {

  /** What the cut list calls a stock piece that is not bought. */
  static final String ON_HAND = "on hand";

  private static final String LEFT = "left in the yard";

  private Yard() {}

  /** Returns what there is of a material in a size. */
  static List<OnHand> of(List<OnHand> all, MaterialKey key) {
    return all.stream().filter(some -> some.key().normal().equals(key.normal())).toList();
  }

  /** Returns what there is of a material where one lot alone takes from it; else none. */
  static List<OnHand> of(List<OnHand> all, MaterialKey key, List<Lot> lots) {
    List<OnHand> there = of(all, key);
    if (there.isEmpty()) {
      return there; // the lots of a season are many
    }
    MaterialKey size = key.normal();
    long takers = lots.stream().filter(lot -> lot.key().normal().equals(size)).count();
    return takers == 1 ? there : List.of();
  }

  /** Returns what is surely left whichever of the options is taken. */
  static List<OnHand> without(List<OnHand> there, List<Option> options) {
    List<OnHand> left = there;
    Map<Length, Integer> most = new LinkedHashMap<>();
    for (Option option : options) {
      option.plan().ifPresent(plan -> used(plan).forEach((l, n) -> most.merge(l, n, Math::max)));
    }
    for (Map.Entry<Length, Integer> some : most.entrySet()) {
      left = without(left, some.getKey(), some.getValue());
    }
    return left;
  }

  private static Map<Length, Integer> used(CutResult.Planned plan) {
    Map<Length, Integer> used = new LinkedHashMap<>();
    for (CutResult.Pattern pattern : plan.patterns()) {
      if (pattern.stock().id().equals(ON_HAND)) {
        used.merge(pattern.stock().length(), pattern.times(), Integer::sum);
      }
    }
    return used;
  }

  private static List<OnHand> without(List<OnHand> there, Length length, int pieces) {
    List<OnHand> left = new ArrayList<>();
    int open = pieces;
    for (OnHand some : there) {
      int taken = some.length().equals(length) ? Math.min(open, some.pieces()) : 0;
      open -= taken;
      if (some.pieces() > taken) {
        left.add(some.withPieces(some.pieces() - taken));
      }
    }
    return left;
  }

  /** Returns the offcuts over Keep offcuts, and before them what was on hand and was not used. */
  static List<OnHand> after(List<OnHand> before, List<Choice> choices) {
    List<OnHand> after = new ArrayList<>();
    Map<MaterialKey, List<OnHand>> left = new LinkedHashMap<>();
    before.forEach(some -> left.computeIfAbsent(some.key().normal(), k -> of(before, some.key())));
    for (Choice choice : choices) {
      left.computeIfPresent(
          choice.lot().key().normal(), (k, there) -> without(there, List.of(choice.option())));
    }
    left.values()
        .forEach(
            there ->
                there.forEach(
                    some ->
                        after.add(
                            new OnHand(
                                some.key(), some.units(), some.length(), some.pieces(), LEFT))));
    choices.forEach(choice -> after.addAll(kept(choice)));
    return after;
  }

  private static List<OnHand> kept(Choice choice) {
    Lot lot = choice.lot();
    Length least =
        lot.jobs().stream()
            .map(job -> job.practice().length(Setting.KEEP_OFFCUTS))
            .reduce(Length::min)
            .orElseThrow();
    Map<Length, Integer> kept = new LinkedHashMap<>();
    choice
        .option()
        .plan()
        .ifPresent(
            plan ->
                plan.patterns().stream()
                    .filter(pattern -> pattern.offcut().isMoreThan(least))
                    .forEach(p -> kept.merge(p.offcut(), p.times(), Integer::sum)));
    String from = String.join(", ", lot.jobs().stream().map(Job::code).toList());
    List<OnHand> offcuts = new ArrayList<>();
    kept.forEach(
        (length, pieces) ->
            offcuts.add(new OnHand(lot.key(), lot.jobs().get(0).units(), length, pieces, from)));
    return offcuts;
  }
}
