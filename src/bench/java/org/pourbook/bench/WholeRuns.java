package org.pourbook.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.pourbook.book.out.Season;
import org.pourbook.book.out.SpreadsheetProgram;

/** Estimates of one size: stage by stage beside the floor, whole beside a spreadsheet program. */
final class WholeRuns {

  /** Above this a spreadsheet program takes too long to be waited for. */
  private static final int MOST_RECALCULATED = 100;

  private final Programs programs;
  private final String heap;
  private final int jobs;
  private final Path season;
  private final Path order;

  WholeRuns(Programs programs, String heap, int jobs) throws IOException {
    this.programs = programs;
    this.heap = "-Xmx" + heap;
    this.jobs = jobs;
    this.season = programs.folder().resolve("season-" + jobs + ".xlsx");
    this.order = programs.folder().resolve("order-" + jobs + ".xlsx");
    Season.write(season, jobs);
  }

  void print(Table table) throws IOException, InterruptedException {
    stages(table);
    if (jobs <= MOST_RECALCULATED && SpreadsheetProgram.isOnPath()) {
      recalculation(table);
    }
  }

  private int rounds() {
    return jobs <= 1 ? 9 : jobs <= 100 ? 5 : 1;
  }

  private void stages(Table table) throws IOException, InterruptedException {
    List<Run> ours = new ArrayList<>();
    List<Run> floor = new ArrayList<>();
    String copy = programs.folder().resolve("copy.xlsx").toString();
    String prices = Programs.PRICES.toString();
    for (int i = 0; i < rounds(); i++) {
      ours.add(programs.java(Stages.class, heap, season.toString(), prices, order.toString()));
      floor.add(
          programs.java(Floor.class, heap, season.toString(), prices, order.toString(), copy));
    }
    table.pair(
        "estimate without cut plans, " + heap,
        size(),
        each(ours, run -> run.stage("all").minus(run.stage("plans").cpu())),
        "bare read and write",
        each(floor, run -> run.stage("all")),
        "3 (of CPU, 10000 jobs)");
    pair(table, "  reading", ours, floor, "read", "inflate and parse");
    table.alone("  take-off", size(), each(ours, run -> run.stage("take-off")), "");
    table.alone("  cut plans", size(), each(ours, run -> plans(run, 1)), "");
    table.alone(
        "    each of " + (long) ours.get(0).stage("plans").wall(),
        size(),
        each(ours, run -> plans(run, run.stage("plans").wall())),
        "10 ms of CPU");
    table.alone(
        "  buying besides", size(), each(ours, run -> new Figure(Double.NaN, besides(run))), "");
    pair(table, "  writing", ours, floor, "write", "write and deflate");
  }

  private static Figure plans(Run run, double count) {
    return new Figure(Double.NaN, run.stage("plans").cpu() / count);
  }

  private static double besides(Run run) {
    return run.stage("buy and plan").cpu() - run.stage("plans").cpu();
  }

  private void pair(
      Table table, String what, List<Run> ours, List<Run> floor, String stage, String beside) {
    table.pair(
        what,
        size(),
        each(ours, run -> run.stage(stage)),
        beside,
        each(floor, run -> run.stage(stage)),
        "");
  }

  private static List<Figure> each(List<Run> runs, Function<Run, Figure> of) {
    return runs.stream().map(of).toList();
  }

  private void recalculation(Table table) throws IOException, InterruptedException {
    programs.makeArchive();
    SpreadsheetProgram program = new SpreadsheetProgram(programs.folder());
    Path stripped = program.stripped(order);
    List<Figure> ours = new ArrayList<>();
    List<Figure> theirs = new ArrayList<>();
    programs.other(program.conversion(stripped, "xlsx")); // makes its profile
    for (int i = 0; i < rounds(); i++) {
      ours.add(
          programs
              .launch(
                  "estimate",
                  season.toString(),
                  "--prices",
                  Programs.PRICES.toString(),
                  "-o",
                  order.toString(),
                  "--overwrite",
                  "--quiet")
              .whole());
      theirs.add(programs.other(program.conversion(stripped, "xlsx")).whole());
    }
    table.pair(
        "estimate by the launcher",
        size(),
        ours,
        "LibreOffice works it out",
        theirs,
        jobs == 1 ? "0.33" : "");
  }

  private String size() {
    return Integer.toString(jobs);
  }
}
