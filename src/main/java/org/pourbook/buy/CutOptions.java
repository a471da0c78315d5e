package org.pourbook.buy;

import static org.pourbook.problem.Standing.COMMON_PRACTICE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.pourbook.cut.CutJob;
import org.pourbook.cut.CutPlanner;
import org.pourbook.cut.CutResult;
import org.pourbook.job.Job;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.PieceNeed;
import org.pourbook.takeoff.Source;

/**
 * The ways to meet a cut-planned lot (CUT-1): one a supplier, each with the supplier's own plan.
 */
final class CutOptions {

  /** Cut step of a plan that jobs of both systems share. */
  private static final Length SHARED_STEP = Length.ofInches(1, 16);

  /** What can be had, and why nothing can. */
  record Result(List<Option> options, List<String> failures) {}

  private final Lot lot;
  private final PriceBook prices;
  private final CutPlanner planner;
  private final List<CutStock> onHand;
  private final List<CutPiece> pieces = new ArrayList<>();

  /** Pieces that may be bought as they are, as stock of just their length. */
  private final List<CutJob.Stock> asTheyAre = new ArrayList<>();

  /** Why a supplier's stock is not enough. */
  private final Map<String, String> whyNot = new LinkedHashMap<>();

  private CutOptions(Lot lot, PriceBook prices, CutPlanner planner, List<OnHand> onHand) {
    this.lot = lot;
    this.prices = prices;
    this.planner = planner;
    this.onHand = onHand.stream().map(CutStock::of).toList();
    for (Portion portion : lot.portions()) {
      portion.pieces().forEach(piece -> pieces.add(new CutPiece(portion, piece)));
    }
  }

  /**
   * Returns an option a supplier; where none can be planned, one without a price, and why.
   *
   * @param onHand cut before anything is bought
   */
  @Source(
      rule = "CUT-1",
      says =
          "Pieces are cut from stock by the cheapest plan over all stock lengths on offer; cut"
              + " lengths are rounded up and stock lengths down to the Cut step",
      value = "kerf 1/8 in for boards, 0 for sheared bars; step 1/16 in or 1 mm",
      standing = COMMON_PRACTICE)
  static Result of(Lot lot, PriceBook prices, CutPlanner planner, List<OnHand> onHand) {
    return new CutOptions(lot, prices, planner, onHand).all();
  }

  /**
   * Returns the plan over what an earlier order brings alone, worth as little as possible so that
   * most can be sent back; empty where that is not enough.
   */
  static Optional<Option> fromHand(Lot lot, CutPlanner planner) {
    if (lot.inHand().isEmpty()) {
      return Optional.empty();
    }
    CutOptions options = new CutOptions(lot, PriceBook.EMPTY, planner, List.of());
    CutResult result = planner.plan(options.cutJob(StockInHand.offered(lot.inHand(), false)));
    return result instanceof CutResult.Planned plan
        ? Optional.of(
            CutPurchases.option(
                lot, options.pieces, List.of(), plan, PriceBook.EMPTY, Optional.empty()))
        : Optional.empty();
  }

  /**
   * Returns how many of some pieces are cut from boards or bars in the cheapest plan in which each
   * of them may also be bought as it is.
   *
   * @param asTheyAre a stock of just the length of each, at what one costs
   * @param meant the pieces that may be bought; others of the lot are always cut
   */
  static int cutRatherThanBought(
      Lot lot,
      PriceBook prices,
      CutPlanner planner,
      List<OnHand> onHand,
      List<CutJob.Stock> asTheyAre,
      Predicate<PieceNeed> meant) {
    CutOptions options = new CutOptions(lot, prices, planner, onHand);
    options.asTheyAre.addAll(asTheyAre);
    return options.bySupplier().values().stream()
        .map(stock -> planner.plan(options.cutJob(options.withOnHand(stock), true)))
        .flatMap(result -> result instanceof CutResult.Planned p ? Stream.of(p) : Stream.empty())
        .min(Comparator.comparing(CutResult.Planned::costMicros))
        .map(plan -> options.cutFromStock(plan, meant))
        .orElse(0);
  }

  private int cutFromStock(CutResult.Planned plan, Predicate<PieceNeed> meant) {
    int cut = 0;
    for (CutResult.Pattern pattern : plan.patterns()) {
      if (asTheyAre.stream().noneMatch(one -> one.id().equals(pattern.stock().id()))) {
        for (CutResult.Cut piece : pattern.cuts()) {
          boolean counts = meant.test(pieces.get(Integer.parseInt(piece.goesTo())).need());
          cut += counts ? piece.count() * pattern.times() : 0;
        }
      }
    }
    return cut;
  }

  private Map<String, List<CutStock>> bySupplier() {
    Map<String, List<CutStock>> bySupplier = new LinkedHashMap<>();
    for (Offer offer : Offer.of(prices.answering(lot.key()))) {
      bySupplier
          .computeIfAbsent(offer.supplier(), k -> new ArrayList<>())
          .addAll(CutStock.of(offer, lot, usual()));
    }
    return bySupplier;
  }

  private List<CutStock> withOnHand(List<CutStock> stock) {
    List<CutStock> all = new ArrayList<>(stock);
    all.addAll(onHand);
    return all;
  }

  private Result all() {
    Map<String, List<CutStock>> bySupplier = bySupplier();
    List<String> failures = new ArrayList<>();
    List<Option> options = planned(bySupplier, true, failures);
    if (options.isEmpty()) {
      options = planned(bySupplier, false, new ArrayList<>());
    }
    if (options.isEmpty()) {
      options = planned(Map.of("", CutStock.unpriced(usual())), false, failures);
    }
    if (options.isEmpty()) {
      options = CountedOptions.of(lot, PriceBook.EMPTY);
    }
    boolean nothingSold = bySupplier.isEmpty() && options.get(0).plan().isPresent();
    boolean fine = options.get(0).isPriced() || nothingSold;
    return new Result(options, fine ? List.of() : failures);
  }

  private List<Length> usual() {
    Material material = Material.named(lot.key().material()).orElseThrow();
    return StockLengths.usual(material, lot.jobs().get(0).units());
  }

  private List<Option> planned(
      Map<String, List<CutStock>> bySupplier, boolean inStockOnly, List<String> failures) {
    List<Option> options = new ArrayList<>();
    bySupplier.forEach(
        (supplier, stock) -> {
          String who = supplier.isEmpty() ? "stock of the usual lengths" : "stock of " + supplier;
          if (stock.isEmpty()) {
            failures.add(who + ": no Stock length is given");
            return;
          }
          List<CutStock> all = withOnHand(stock);
          CutResult result = planner.plan(cutJob(all, inStockOnly));
          if (result instanceof CutResult.Planned plan) {
            options.add(
                CutPurchases.option(
                    lot, pieces, all, plan, prices, Optional.ofNullable(whyNot.get(supplier))));
          } else if (result instanceof CutResult.Impossible impossible) {
            failures.add(who + ": " + impossible.why());
            whyNot.putIfAbsent(supplier, impossible.why());
          }
        });
    return options;
  }

  private CutJob cutJob(List<CutStock> stock, boolean inStockOnly) {
    List<CutJob.Stock> offered = new ArrayList<>();
    for (CutStock item : stock) {
      offered.add(
          new CutJob.Stock(
              Integer.toString(offered.size()),
              item.length(),
              cost(item),
              item.limit(inStockOnly)));
    }
    offered.addAll(StockInHand.offered(lot.inHand(), true));
    offered.addAll(asTheyAre);
    return cutJob(offered);
  }

  /** Stock without a price costs its length where some is in hand, so that this is cut first. */
  private long cost(CutStock item) {
    boolean byLength = item.offer().isEmpty() && item.onHand().isEmpty() && !lot.inHand().isEmpty();
    return byLength ? item.length().nanometres() / 1000 : item.costMicros();
  }

  private CutJob cutJob(List<CutJob.Stock> offered) {
    Length longest = offered.stream().map(CutJob.Stock::length).reduce(Length.ZERO, Length::max);
    List<CutJob.Piece> wanted = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      PieceNeed need = pieces.get(i).need();
      if (need.run().isEmpty()) {
        Length length = uncut(need.length(), longest);
        wanted.add(new CutJob.Piece(length, need.count(), Integer.toString(i)));
      }
    }
    return new CutJob(wanted, CutRuns.of(pieces, longest, step()), offered, kerf(), step());
  }

  /** A piece as long as the longest stock, but for a step, is that stock: nothing is cut. */
  private Length uncut(Length length, Length longest) {
    Length whole = longest.roundedDownTo(step());
    return length.isMoreThan(whole) && !length.isMoreThan(longest) && whole.isPositive()
        ? whole
        : length;
  }

  private Length kerf() {
    boolean bar = Material.named(lot.key().material()).orElseThrow() == Material.BAR;
    Setting setting = bar ? Setting.SAW_KERF_BAR : Setting.SAW_KERF;
    return lot.jobs().stream()
        .map(job -> job.practice().length(setting))
        .reduce(Length.ZERO, Length::max);
  }

  private Length step() {
    List<Length> steps = lot.jobs().stream().map(CutOptions::step).distinct().toList();
    return steps.size() == 1 ? steps.get(0) : SHARED_STEP;
  }

  private static Length step(Job job) {
    Length usual = job.units().isMetric() ? Length.ofMillimetres(1) : SHARED_STEP;
    return job.practice().value(Setting.CUT_STEP).length().orElse(usual);
  }
}
