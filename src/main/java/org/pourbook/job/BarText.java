package org.pourbook.job;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthText;
import org.pourbook.measure.Unit;

/** Bars as drawings write them: {@code #4 @ 16 EW}, {@code #4 @ 12 x #3 @ 18}, {@code 2 #4}. */
public final class BarText {

  private static final int CASE = Pattern.CASE_INSENSITIVE;

  private static final Pattern EACH_WAY =
      Pattern.compile("([^@]+)@(.+?)(?:o\\.?c\\.?\\s*)?(?:e\\.?\\s*w\\.?|each\\s+way)", CASE);
  private static final Pattern TWO_WAYS =
      Pattern.compile("([^@]+)@([^@x×]+)[x×]([^@]+)@([^@]+)", CASE);
  private static final Pattern ON_CENTRE = Pattern.compile("\\s*\\bo\\.?c\\.?\\s*$", CASE);
  private static final Pattern RUN =
      Pattern.compile("(?:\\((\\d{1,4})\\)|(\\d{1,4})(?=[\\s#x×-]))\\s*[-x×]?\\s*(\\S.*)", CASE);

  /** Bars that touch are no mat: a smaller number was meant in another unit. */
  private static final Length CLOSEST = Length.ofInches(1);

  /** More do not lie beside each other in one edge or pier. */
  public static final int MOST_BARS = 100;

  private BarText() {}

  /**
   * Returns the bars of a mat; empty when the text is none, a size is unknown or a spacing is under
   * 1 in.
   *
   * @param bareSpacing the unit of a spacing without one: in, or mm in an {@code m} job
   */
  public static Optional<BarMat> mat(String text, Unit bareSpacing) {
    String words = text.strip();
    Matcher eachWay = EACH_WAY.matcher(words);
    if (eachWay.matches()) {
      return mat(
          eachWay.group(1), eachWay.group(2), eachWay.group(1), eachWay.group(2), bareSpacing);
    }
    Matcher twoWays = TWO_WAYS.matcher(words);
    return twoWays.matches()
        ? mat(twoWays.group(1), twoWays.group(2), twoWays.group(3), twoWays.group(4), bareSpacing)
        : Optional.empty();
  }

  private static Optional<BarMat> mat(
      String along, String alongSpacing, String across, String acrossSpacing, Unit bare) {
    Optional<BarSize> first = BarSize.named(along);
    Optional<BarSize> second = BarSize.named(across);
    Optional<Length> firstSpacing = spacing(alongSpacing, bare);
    Optional<Length> secondSpacing = spacing(acrossSpacing, bare);
    if (first.isEmpty() || second.isEmpty() || firstSpacing.isEmpty() || secondSpacing.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new BarMat(first.get(), firstSpacing.get(), second.get(), secondSpacing.get()));
  }

  private static Optional<Length> spacing(String text, Unit bare) {
    return LengthText.read(ON_CENTRE.matcher(text).replaceAll(""), bare)
        .filter(spacing -> !spacing.isLessThan(CLOSEST));
  }

  /** Returns bars along a run, {@code 2 #4}; empty when the text is none, or over 100 bars. */
  public static Optional<BarRun> run(String text) {
    Matcher run = RUN.matcher(text.strip());
    if (!run.matches()) {
      return Optional.empty();
    }
    String digits = run.group(1) == null ? run.group(2) : run.group(1);
    int count = Integer.parseInt(digits);
    return count == 0 || count > MOST_BARS
        ? Optional.empty()
        : BarSize.named(run.group(3)).map(size -> new BarRun(count, size));
  }
}
