package org.pourbook.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;

/** Runs commands as a shell would and keeps what the last one said. */
abstract class CommandRuns {

  String out = "";
  String err = "";

  int run(Object... args) {
    StringWriter outText = new StringWriter();
    StringWriter errText = new StringWriter();
    int status =
        Main.commandLine()
            .setOut(new PrintWriter(outText))
            .setErr(new PrintWriter(errText))
            .execute(Arrays.stream(args).map(Object::toString).toArray(String[]::new));
    out = outText.toString();
    err = errText.toString();
    return status;
  }
}
