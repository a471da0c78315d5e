package org.pourbook.cli;

import java.io.PrintWriter;
import java.util.function.IntConsumer;

/**
 * A bar on standard error, on a terminal only, and only when a batch takes longer than a second.
 *
 * <p>Redrawn at most once a percent; wiped before anything else is printed.
 */
final class Progress implements IntConsumer, AutoCloseable {

  private static final int WIDTH = 30;
  private static final long PATIENCE_NANOS = 1_000_000_000L;

  private final PrintWriter err;
  private final int total;
  private final boolean shown;
  private final long startNanos = System.nanoTime();
  private int lastPercent = -1;

  /**
   * @param total jobs in the batch
   * @param shown whether a person watches
   */
  Progress(PrintWriter err, int total, boolean shown) {
    this.err = err;
    this.total = total;
    this.shown = shown && total > 0;
  }

  /** Draws the bar for a number of jobs done. */
  @Override
  public synchronized void accept(int done) {
    if (!shown || System.nanoTime() - startNanos < PATIENCE_NANOS) {
      return;
    }
    int percent = (int) (100L * done / total);
    if (percent <= lastPercent) {
      return;
    }
    lastPercent = percent;
    int filled = WIDTH * percent / 100;
    err.print(
        "\r["
            + "#".repeat(filled)
            + " ".repeat(WIDTH - filled)
            + "] "
            + done
            + " of "
            + total
            + " jobs");
    err.flush();
  }

  @Override
  public void close() {
    if (lastPercent >= 0) {
      err.print("\r" + " ".repeat(WIDTH + 40) + "\r");
      err.flush();
    }
  }
}
