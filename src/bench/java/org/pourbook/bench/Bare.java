package org.pourbook.bench;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** A program of one command that does nothing: Java's own start with the same command line. */
@Command(name = "bare", description = "Does nothing.", mixinStandardHelpOptions = true)
final class Bare implements Runnable {

  /** Runs the command line and ends the process with its exit status. */
  public static void main(String[] args) {
    System.exit(new CommandLine(new Bare()).execute(args));
  }

  @Override
  public void run() {}
}
