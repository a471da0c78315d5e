package org.pourbook.cli;

import org.pourbook.cut.CutPlanner;
import org.pourbook.cut.OptimalPlanner;
import picocli.CommandLine.Option;

/** How cuts are planned, shared by all commands that plan them. */
final class Cutting {

  @Option(
      names = "--prove",
      description = "Search longer where a cut plan is not proven the cheapest.")
  private boolean prove;

  CutPlanner planner() {
    return prove ? OptimalPlanner.proving() : OptimalPlanner.usual();
  }
}
