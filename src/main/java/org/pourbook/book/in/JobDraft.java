package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;

/** A job on its way through the passes: its rows of every sheet and what is wrong with them. */
final class JobDraft {

  private final String code;
  private final Cells cells;
  private final UnitSystem units;
  private final List<Problem> problems;
  private final Map<InputSheet, List<TableRow>> rows = new EnumMap<>(InputSheet.class);
  private boolean refused;

  /**
   * @param cells of its row on Jobs
   * @param problems where its problems go
   */
  JobDraft(String code, Cells cells, UnitSystem units, List<Problem> problems) {
    this.code = code;
    this.cells = cells;
    this.units = units;
    this.problems = problems;
  }

  String code() {
    return code;
  }

  /** Returns the cells of its row on Jobs. */
  Cells cells() {
    return cells;
  }

  UnitSystem units() {
    return units;
  }

  List<TableRow> rows(InputSheet sheet) {
    return rows.getOrDefault(sheet, List.of());
  }

  void add(InputSheet sheet, TableRow row) {
    rows.computeIfAbsent(sheet, s -> new ArrayList<>()).add(row);
  }

  /** Returns the cells of one of its rows. */
  Cells cells(TableRow row) {
    return new Cells(row, units, code, Effect.JOB_LEFT_OUT, problems);
  }

  /** Leaves the job out for a problem that was reported elsewhere. */
  void leaveOut() {
    refused = true;
  }

  /** Leaves the job out. */
  void refuse(Place place, String found, String expected) {
    refused = true;
    problems.add(new Problem(place, code, found, expected, Effect.JOB_LEFT_OUT));
  }

  void note(Place place, String found, String expected) {
    problems.add(new Problem(place, code, found, expected, Effect.NOTE));
  }

  /** Leaves the job out unless the cells are sound; call it when all of them were read. */
  boolean accepts(Cells read) {
    refused |= !read.isSound();
    return read.isSound();
  }

  boolean isRefused() {
    return refused;
  }
}
