package org.pourbook.buy;

import static org.pourbook.problem.Standing.COMMON_PRACTICE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.pourbook.cut.CutPlanner;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.CutPegs;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.Source;
import org.pourbook.takeoff.TakeOff;

/**
 * Stakes and braces that take-off would buy, cut from what the boards of the same delivery leave
 * where that costs less (FORM-4, FORM-5).
 */
public final class CutOrBought {

  private final PriceBook prices;
  private final CutPlanner planner;
  private final List<OnHand> onHand;
  private final Map<String, TakeOff> takeOffs = new LinkedHashMap<>();
  private final Map<String, Integer> places = new HashMap<>();

  private CutOrBought(
      List<TakeOff> takeOffs, PriceBook prices, CutPlanner planner, List<OnHand> onHand) {
    this.prices = prices;
    this.planner = planner;
    this.onHand = onHand;
    for (TakeOff takeOff : takeOffs) {
      places.put(takeOff.job().code(), places.size());
      this.takeOffs.put(takeOff.job().code(), takeOff);
    }
  }

  /**
   * What is bought.
   *
   * @param takeOffs as given, with those pegs that are cut among the boards' pieces
   */
  public record Result(List<TakeOff> takeOffs, Bought bought) {
    public Result {
      takeOffs = List.copyOf(takeOffs);
    }
  }

  /**
   * Returns what is bought for the jobs at the cheaper total: with some pegs cut, or with all
   * bought as take-off has them; so for each job, or for jobs that may share a delivery.
   */
  @Source(
      rule = "FORM-4",
      says =
          "Stakes that are bought are cut with the boards of the same delivery instead, in their"
              + " offcuts first, as many as make boards and packs together cheapest",
      value = "from 2x4; in a metric job from 38x89 where it is sold",
      standing = COMMON_PRACTICE)
  @Source(
      rule = "FORM-5",
      says = "Braces that are bought are cut with the boards instead where that costs less",
      value = "from 2x4; in a metric job from 38x89 where it is sold",
      standing = COMMON_PRACTICE)
  public static Result buy(
      List<TakeOff> takeOffs, PriceBook prices, CutPlanner planner, List<OnHand> onHand) {
    List<TakeOff> chosen = new CutOrBought(takeOffs, prices, planner, onHand).chosen();
    if (chosen.equals(takeOffs)) {
      return new Result(takeOffs, Buyer.buy(takeOffs, prices, planner, onHand));
    }
    // Only one purchase is held at a time: of a season each fills a good part of the memory.
    List<Money> asListed = totals(Buyer.buy(takeOffs, prices, planner, onHand));
    Bought bought = Buyer.buy(chosen, prices, planner, onHand);
    List<TakeOff> cheaper =
        cheaper(takeOffs, asListed, chosen, totals(bought), together(takeOffs, !onHand.isEmpty()));
    return cheaper.equals(chosen)
        ? new Result(chosen, bought)
        : new Result(cheaper, Buyer.buy(cheaper, prices, planner, onHand));
  }

  private static List<Money> totals(Bought bought) {
    return bought.totals().stream().map(JobTotals::total).toList();
  }

  /** Returns jobs that may share a delivery, by their index; what is on hand all jobs share. */
  private static List<List<Integer>> together(List<TakeOff> takeOffs, boolean onHand) {
    DisjointSets jobs = new DisjointSets(takeOffs.size());
    for (int i = 0; i < takeOffs.size(); i++) {
      int index = i;
      if (onHand) {
        jobs.join(0, i);
      } else {
        takeOffs.get(i).job().deliverTo().ifPresent(shared -> jobs.joinBy(shared, index));
      }
    }
    return jobs.groups();
  }

  /** Fees and minimum orders may eat what goods save: then jobs keep what take-off lists. */
  private static List<TakeOff> cheaper(
      List<TakeOff> listed,
      List<Money> asListed,
      List<TakeOff> chosen,
      List<Money> asChosen,
      List<List<Integer>> together) {
    List<TakeOff> cheaper = new ArrayList<>(chosen);
    for (List<Integer> jobs : together) {
      Money before = Money.sum(jobs.stream().map(asListed::get).toList());
      if (before.compareTo(Money.sum(jobs.stream().map(asChosen::get).toList())) < 0) {
        jobs.forEach(i -> cheaper.set(i, listed.get(i)));
      }
    }
    return List.copyOf(cheaper);
  }

  private List<TakeOff> chosen() {
    if (takeOffs.values().stream().anyMatch(takeOff -> !takeOff.pegs().isEmpty())) {
      List<Lot> lots = Lots.of(List.copyOf(takeOffs.values()), prices);
      Map<Beside, Lot> cut = new HashMap<>();
      lots.stream().filter(Lot::hasPieces).forEach(lot -> cut.putIfAbsent(beside(lot), lot));
      lots.stream().filter(CutOrBought::isPegs).forEach(lot -> choose(lot, lots, cut));
    }
    return List.copyOf(takeOffs.values());
  }

  /** What is cut from boards of a size and comes to a place together. */
  private record Beside(Object place, MaterialKey board) {}

  private static Beside beside(Lot lot) {
    return new Beside(PegCosts.place(lot), lot.key().normal());
  }

  private static boolean isPegs(Lot lot) {
    Optional<Material> material = Material.named(lot.key().material());
    return material.equals(Optional.of(Material.STAKE))
        || material.equals(Optional.of(Material.BRACE));
  }

  private void choose(Lot pegs, List<Lot> lots, Map<Beside, Lot> cut) {
    List<MaterialKey> boards =
        pegs.jobs().stream()
            .map(job -> CutPegs.board(job.units(), prices))
            .flatMap(Optional::stream)
            .distinct()
            .toList();
    if (boards.size() != 1) {
      return; // none is sold, or jobs of both systems would each cut another
    }
    MaterialKey board = boards.get(0);
    Lot beside = cut.get(new Beside(PegCosts.place(pegs), board.normal()));
    if (beside == null) {
      return;
    }
    List<OnHand> there = Yard.of(onHand, board, lots);
    PegCosts costs = new PegCosts(pegs, board, prices, planner, there);
    PegTrial.cheapest(costs, group(pegs, beside))
        .forEach(takeOff -> takeOffs.put(takeOff.job().code(), takeOff));
  }

  /** Returns the take-offs of the jobs of both, in the batch's order. */
  private List<TakeOff> group(Lot pegs, Lot boards) {
    return Stream.of(boards, pegs)
        .flatMap(lot -> lot.jobs().stream())
        .map(Job::code)
        .distinct()
        .sorted(Comparator.comparing(places::get))
        .map(takeOffs::get)
        .toList();
  }
}
