package org.pourbook.buy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.CutPegs;
import org.pourbook.takeoff.PieceNeed;
import org.pourbook.takeoff.TakeOff;

/** How many stakes or braces of a lot are cut with the boards that come with them. */
final class PegTrial {

  /** Numbers that are all looked at; of more, only those near the plan that buys singly. */
  private static final int MANY = 12;

  private static final int NEAR = 6;

  private final PegCosts costs;
  private final List<TakeOff> group;
  private final List<Peg> pegs;

  /** Like pegs of a job. */
  private record Peg(String job, PieceNeed need) {}

  private PegTrial(PegCosts costs, List<TakeOff> group) {
    this.costs = costs;
    this.group = group;
    this.pegs = pegs();
  }

  /**
   * Returns take-offs with as many pegs cut as cost least with the boards, and no more of them.
   *
   * @param group take-offs of the jobs whose boards come with the lot, its own among them
   */
  static List<TakeOff> cheapest(PegCosts costs, List<TakeOff> group) {
    return new PegTrial(costs, List.copyOf(group)).cheapest();
  }

  /** Returns the pegs of the lot's portions, the shortest first, which are the easiest to cut. */
  private List<Peg> pegs() {
    Map<String, Set<Integer>> pours = new HashMap<>();
    for (Portion portion : costs.lot().portions()) {
      pours.computeIfAbsent(portion.job().code(), k -> new HashSet<>()).add(portion.pour());
    }
    List<Peg> all = new ArrayList<>();
    for (TakeOff takeOff : group) {
      String job = takeOff.job().code();
      for (PieceNeed need : takeOff.pegs()) {
        if (need.material().normal().equals(costs.lot().key().normal())
            && pours.getOrDefault(job, Set.of()).contains(need.pour())) {
          all.add(new Peg(job, need));
        }
      }
    }
    all.sort(Comparator.comparing((Peg peg) -> peg.need().length()));
    return List.copyOf(all);
  }

  private List<TakeOff> cheapest() {
    Optional<PegCosts.Cost> none = pegs.isEmpty() ? Optional.empty() : costs.of(group);
    if (none.isEmpty()) {
      return group;
    }
    Money best = none.get().goods();
    List<TakeOff> chosen = group;
    for (int cut : near(worthwhile(none.get()))) {
      List<TakeOff> with = with(cut);
      Optional<PegCosts.Cost> cost = costs.of(with);
      if (cost.isPresent() && cost.get().goods().compareTo(best) < 0) {
        best = cost.get().goods();
        chosen = with;
      }
    }
    return chosen;
  }

  /** Returns the numbers at which less is paid for packs, but for those that cannot pay. */
  private List<Integer> worthwhile(PegCosts.Cost none) {
    List<Integer> numbers = new ArrayList<>();
    Money before = costs.bought(0);
    double metres = costs.boardsM(group);
    int cut = 0;
    for (Peg peg : pegs) {
      for (int i = 0; i < peg.need().count(); i++) {
        cut++;
        metres += peg.need().length().metres();
        Money packs = costs.bought(cut);
        if (packs.compareTo(before) < 0) {
          before = packs;
          Money byLength = costs.byLength(metres);
          Money least = none.leastBoards().compareTo(byLength) < 0 ? byLength : none.leastBoards();
          if (packs.plus(least).compareTo(none.goods()) < 0) {
            numbers.add(cut);
          }
        }
      }
    }
    return numbers;
  }

  private List<Integer> near(List<Integer> numbers) {
    if (numbers.size() <= MANY) {
      return numbers;
    }
    int all = pegs.stream().mapToInt(peg -> peg.need().count()).sum();
    List<PieceNeed> cut =
        pegs.stream().map(peg -> CutPegs.ofBoard(peg.need(), costs.board())).toList();
    int likely = costs.likely(with(all), cut);
    return numbers.stream()
        .sorted(Comparator.comparingInt((Integer number) -> Math.abs(number - likely)))
        .limit(NEAR)
        .sorted()
        .toList();
  }

  /** Returns the take-offs with so many pegs cut. */
  private List<TakeOff> with(int cut) {
    Map<String, Integer> byJob = new HashMap<>();
    int open = cut;
    for (Peg peg : pegs) {
      int taken = Math.min(open, peg.need().count());
      byJob.merge(peg.job(), taken, Integer::sum);
      open -= taken;
    }
    List<TakeOff> with = new ArrayList<>();
    for (TakeOff takeOff : group) {
      String job = takeOff.job().code();
      List<PieceNeed> own =
          pegs.stream().filter(peg -> peg.job().equals(job)).map(Peg::need).toList();
      List<PieceNeed> some = CutPegs.shortest(own, byJob.getOrDefault(job, 0));
      with.add(CutPegs.of(takeOff, costs.board(), some));
    }
    return with;
  }
}
