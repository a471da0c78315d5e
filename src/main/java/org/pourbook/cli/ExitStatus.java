package org.pourbook.cli;

/** How a command ends. */
final class ExitStatus {

  static final int DONE = 0;

  /** An error inside the tool. */
  static final int DEFECT = 1;

  /** The command line is wrong; picocli's own. */
  static final int USAGE = 2;

  /** Done, but something in the input could not be used. */
  static final int PARTLY = 3;

  /** Nothing done: a file cannot be read or written, or no job was usable. */
  static final int NOTHING = 4;

  private ExitStatus() {}
}
