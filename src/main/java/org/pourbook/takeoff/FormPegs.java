package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.pourbook.job.Job;
import org.pourbook.measure.Length;
import org.pourbook.measure.LumberSize;
import org.pourbook.measure.UnitSystem;

/** Where a job's stakes and braces come from: bought, or cut from 2x4 (FORM-4, FORM-5). */
final class FormPegs {

  private static final Pattern SIZE =
      Pattern.compile("\\s*(\\d{1,5}(?:\\.\\d{1,4})?)\\s*(in|\"|mm|)\\s*");

  private final UnitSystem units;
  private final OnOffer onOffer;
  private final FormLumber lumber;

  FormPegs(Job job, OnOffer onOffer, FormLumber lumber) {
    this.units = job.units();
    this.onOffer = onOffer;
    this.lumber = lumber;
  }

  /**
   * A stake or brace to be had.
   *
   * @param material bought, each; or the board it is cut from
   * @param length as bought or cut
   */
  record Peg(MaterialKey material, Length length, boolean cut) {}

  /**
   * Returns the shortest stake on offer that is long enough; one cut from 2x4 where that is cheaper
   * or none is sold.
   */
  Peg stake(Length needed) {
    Optional<Peg> bought =
        Stream.concat(onOffer.sizes(Material.STAKE.label()).stream(), Stream.of(text(needed)))
            .map(Material.STAKE::of)
            .filter(onOffer::has)
            .flatMap(key -> length(key.size()).map(length -> new Peg(key, length, false)).stream())
            .filter(peg -> !peg.length().isLessThan(needed))
            .min(Comparator.comparing(Peg::length).thenComparing(Peg::material));
    Optional<Peg> cut = lumber.twoByFour().map(size -> cut(size, needed));
    if (bought.isPresent() && cut.isPresent()) {
      return isCheaper(needed, bought.get()) ? cut.get() : bought.get();
    }
    return bought.or(() -> cut).orElse(new Peg(Material.STAKE.of(text(needed)), needed, false));
  }

  private static Peg cut(LumberSize size, Length length) {
    return new Peg(FormLumber.key(size), length, true);
  }

  private boolean isCheaper(Length needed, Peg bought) {
    Optional<BigDecimal> asCut = lumber.twoByFour().flatMap(size -> lumber.price(size, needed));
    Optional<BigDecimal> asSold = onOffer.leastPrice(bought.material());
    return asCut.isPresent() && asSold.isPresent() && asCut.get().compareTo(asSold.get()) < 0;
  }

  /** Returns a brace as it is sold, or cut from 2x4 where no brace is sold but the board is. */
  Peg brace(Length needed) {
    MaterialKey sold = Material.BRACE.of(lumber.usualTwoByFour());
    return lumber
        .twoByFour()
        .filter(size -> !onOffer.has(sold))
        .map(size -> cut(size, needed))
        .orElse(new Peg(sold, needed, false));
  }

  /** Returns a stake's size as it is asked for: {@code 24 in}, or whole millimetres. */
  private String text(Length length) {
    return units.isMetric()
        ? length.ceilDiv(Length.ofMillimetres(1)) + " mm"
        : length.ceilDiv(Length.ofInches(1)) + " in";
  }

  private static Optional<Length> length(String size) {
    Matcher match = SIZE.matcher(size);
    if (!match.matches()) {
      return Optional.empty();
    }
    BigDecimal number = new BigDecimal(match.group(1));
    return Optional.of(
        match.group(2).equals("mm") ? Length.ofMillimetres(number) : Length.ofInches(number));
  }
}
