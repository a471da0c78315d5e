package org.pourbook.buy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.pourbook.job.Job;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Material.Planning;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.PieceNeed;
import org.pourbook.takeoff.TakeOff;

/**
 * What the lines of a job come to at most, whoever brings them: each at its dearest price, with
 * every fee and minimum order once a delivery. Worked out before anything is planned or bought.
 */
public final class LineLimits {

  private final PriceBook prices;
  private final Wanted wanted;
  private final List<Portion> portions;
  private final List<Price> offers;

  private LineLimits(PriceBook prices, Wanted wanted) {
    this.prices = prices;
    this.wanted = wanted;
    this.portions = wanted.portions();
    this.offers = offers(wanted.key(), prices);
  }

  /** Returns the rows that may be chosen, be it instead of another. */
  private static List<Price> offers(MaterialKey key, PriceBook prices) {
    Optional<MaterialKey> normal = Optional.of(key.normal());
    List<Price> offers = new ArrayList<>(prices.answering(key));
    prices.prices().stream()
        .filter(price -> price.insteadOf().isPresent())
        .filter(price -> price.insteadOf().map(MaterialKey::normal).equals(normal))
        .forEach(offers::add);
    return offers;
  }

  /**
   * A material in a size of a job.
   *
   * @param money at most, in units of the currency
   * @param pieces cut or bought, in the smallest packs on offer
   * @param loads of concrete, at most
   * @param metres of all pieces that are cut
   */
  public record Line(MaterialKey key, double money, double pieces, double loads, double metres) {}

  /** Returns the lines of a job. */
  public static List<Line> of(TakeOff takeOff, PriceBook prices) {
    return Wants.of(takeOff, prices).stream()
        .map(wanted -> new LineLimits(prices, wanted).line())
        .toList();
  }

  private Line line() {
    double loads = wanted.planning() == Planning.BY_POUR ? most(this::loads) : 0;
    return new Line(
        wanted.key(), most(this::money), Math.max(cut(), most(this::packs)), loads, metres());
  }

  private double most(ToDoubleFunction<Price> of) {
    return offers.stream().mapToDouble(of).max().orElse(0);
  }

  private double metres() {
    return portions.stream()
        .flatMap(portion -> portion.pieces().stream())
        .mapToDouble(piece -> piece.length().metres() * piece.count())
        .sum();
  }

  private double cut() {
    return portions.stream()
        .flatMap(portion -> portion.pieces().stream())
        .mapToDouble(PieceNeed::count)
        .sum();
  }

  /** Returns whole packs of one item, and each piece of a pack of its own, if that is more. */
  private double packs(Price price) {
    double held = OrderUnits.held(price, wanted.key(), wanted.unit());
    double needed = portions.stream().mapToDouble(Portion::needed).sum();
    return Math.max(needed / held, cut()) + portions.size() + spare();
  }

  private double spare() {
    return practice().number(Setting.SPARE_PIECES);
  }

  private double money(Price price) {
    Supplier supplier = prices.supplierOf(price);
    double stops =
        amount(supplier.deliveryFee())
            + amount(supplier.minimumOrder())
            + practice().number(Setting.COST_OF_ANOTHER_STOP);
    double loads =
        wanted.planning() == Planning.BY_POUR
            ? loads(price)
                * (amount(supplier.feePerLoad()) + supplier.shortLoadFee(0).amount().doubleValue())
            : 0;
    return packs(price) * price.price().doubleValue() + portions.size() * stops + loads;
  }

  private static double amount(Optional<Money> money) {
    return money.map(Money::amount).map(Number::doubleValue).orElse(0.0);
  }

  private double loads(Price price) {
    Supplier supplier = prices.supplierOf(price);
    return portions.stream().mapToDouble(portion -> loads(portion, supplier)).sum();
  }

  private double loads(Portion portion, Supplier supplier) {
    double step = ConcreteOptions.or(supplier.orderStepM3(), practice(), Setting.ORDER_STEP);
    double truck = ConcreteOptions.or(supplier.loadSizeM3(), practice(), Setting.LOAD_SIZE);
    double inTime = PlacingTimes.of(portion, supplier).largestLoadM3();
    return portion.needed() / Math.max(step, Math.min(truck, inTime) - step) + 1;
  }

  private Practice practice() {
    return job().practice();
  }

  private Job job() {
    return portions.get(0).job();
  }
}
