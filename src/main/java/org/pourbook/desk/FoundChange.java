package org.pourbook.desk;

/**
 * A cell or row that differs between two inputs.
 *
 * @param section empty where the row belongs to none
 * @param row what tells the row among those of its job and sheet, empty for a section or a job
 * @param what the heading; {@code added} or {@code removed} for a whole row
 * @param before as written, empty for blank
 */
public record FoundChange(
    String job,
    String section,
    String sheet,
    String row,
    String what,
    String before,
    String now,
    String change) {

  /** Returns this with the owner's change that asked for it. */
  FoundChange askedBy(String ownersChange) {
    return new FoundChange(job, section, sheet, row, what, before, now, ownersChange);
  }
}
