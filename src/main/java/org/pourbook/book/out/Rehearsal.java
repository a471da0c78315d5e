package org.pourbook.book.out;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Dot;
import org.pourbook.plan.Drawing.Line;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.plan.Drawing.Words;

/**
 * Writes a small workbook to nowhere, on a processor that is free while jobs are worked out: what
 * the workbook library loads and sets up for its first workbook takes half of a small run.
 *
 * <p>It is over before the workbook proper is written: classes that are set up by two threads at
 * once could wait for one another.
 */
public final class Rehearsal {

  private Rehearsal() {}

  /**
   * Returns what some work gives, with a rehearsal meanwhile where there is a second processor.
   *
   * @param work sets up none of what a workbook is written with
   */
  public static <T> Rehearsed<T> during(Supplier<T> work) {
    return Runtime.getRuntime().availableProcessors() > 1
        ? during(work, OutputStream.nullOutputStream())
        : new Rehearsed<>(work.get(), Optional.empty());
  }

  /** Returns what some work gives, with a rehearsal meanwhile that writes into a stream. */
  static <T> Rehearsed<T> during(Supplier<T> work, OutputStream nowhere) {
    AtomicReference<Throwable> failure = new AtomicReference<>();
    Thread thread = new Thread(() -> write(nowhere), "rehearsal");
    thread.setDaemon(true);
    thread.setUncaughtExceptionHandler((failed, thrown) -> failure.set(thrown));
    thread.start();
    T result;
    try {
      result = work.get();
    } finally {
      await(thread);
    }
    return new Rehearsed<>(result, Optional.ofNullable(failure.get()));
  }

  private static void await(Thread thread) {
    boolean interrupted = false;
    while (thread.isAlive()) {
      try {
        thread.join();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private static void write(OutputStream nowhere) {
    try {
      WorkbookFile.write(sheets(), new Paper(false, ""), "", nowhere);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // of the spool's temporary file
    }
  }

  /** One of each thing that the sheets of an order workbook hold. */
  static List<Sheet> sheets() {
    Column<String> text = Column.text("Text", 9, word -> word);
    Column<String> sum =
        Column.of("Sum", Look.MONEY, 9, at -> Cell.formula("LEN(" + at.cell("Text") + ")", 1));
    Column<String> light =
        Column.of("Light", Look.LIGHT, 9, at -> Cell.formula("\"" + Light.OK + "\"", Light.OK));
    SheetSpec<String> table =
        SheetSpec.landscape(
            "Table", "A table.", List.of(text, sum.inTotal(), light), List.of("=a"));
    CostChart chart = new CostChart(table, List.of(sum.heading()), "");
    Drawing drawing =
        new Drawing(
            "J",
            "",
            List.of(
                new Line(1, 1, 2, 2, Stroke.FORMED),
                new Dot(1, 1, 1),
                new Words(1, 1, "w", 8, 0, Anchor.MIDDLE)));
    return List.of(
        new ReadFirst("Rehearsal", "A rehearsal.", List.of()),
        table.with(chart).withLight(Cell.formula("\"" + Light.OK + "\"", Light.OK)).withPlaces(),
        new PlansSheet(List.of(drawing)));
  }
}
