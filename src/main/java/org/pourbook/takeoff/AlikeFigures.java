package org.pourbook.takeoff;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.measure.Length;

/**
 * Keeps one of each figure of one take-off: its rows give the same lengths, cells and sums of them
 * over and over. Not for several threads; figures of two jobs are seldom equal, so each job has its
 * own.
 */
final class AlikeFigures {

  private final Map<Object, Object> all = new HashMap<>();

  private <T> T kept(T one) {
    @SuppressWarnings("unchecked") // what is equal is of one class
    T before = (T) all.putIfAbsent(one, one);
    return before == null ? one : before;
  }

  Length of(Length length) {
    return kept(length);
  }

  List<Length> of(List<Length> lengths) {
    return kept(lengths.stream().map(this::of).toList());
  }

  Optional<Length> ofLength(Optional<Length> length) {
    return length.isPresent() ? kept(length) : length;
  }

  Optional<Joined> ofJoined(Optional<Joined> joined) {
    return joined.isPresent() ? kept(joined) : joined;
  }

  Optional<Worked> ofWorked(Optional<Worked> worked) {
    return worked.isPresent() ? kept(Optional.of(of(worked.get()))) : worked;
  }

  /** Returns equal arithmetic all parts of which are shared. */
  Worked of(Worked worked) {
    if (worked instanceof Worked.Sum sum) {
      return kept(new Worked.Sum(each(sum.parts())));
    }
    if (worked instanceof Worked.Product product) {
      return kept(new Worked.Product(each(product.factors())));
    }
    if (worked instanceof Worked.Least least) {
      return kept(new Worked.Least(of(least.one()), of(least.other())));
    }
    return kept(worked);
  }

  private List<Worked> each(List<Worked> parts) {
    return parts.stream().map(this::of).toList();
  }
}
