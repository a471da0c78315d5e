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
    String[] words = Arrays.stream(args).map(Object::toString).toArray(String[]::new);
    int status =
        Main.commandLine(words)
            .setOut(new PrintWriter(outText))
            .setErr(new PrintWriter(errText))
            .execute(words);
    out = outText.toString();
    err = errText.toString();
    return status;
  }
}
