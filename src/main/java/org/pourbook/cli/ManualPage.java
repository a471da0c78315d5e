package org.pourbook.cli;

import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page of the command line, in troff's man macros. */
final class ManualPage {

  private final StringBuilder page = new StringBuilder();

  private ManualPage() {}

  /** Returns the page: the program, then each command with its parameters and options. */
  static String of(CommandLine root) {
    ManualPage manual = new ManualPage();
    manual.write(root);
    return manual.page.toString();
  }

  private void write(CommandLine root) {
    CommandSpec spec = root.getCommandSpec();
    String name = root.getCommandName();
    line(".TH " + name.toUpperCase(java.util.Locale.ROOT) + " 1 \"\" \"" + name + "\"");
    line(".SH NAME");
    line(name + " \\- " + text(String.join(" ", spec.usageMessage().description())));
    line(".SH SYNOPSIS");
    line(".B " + name);
    line("COMMAND [OPTIONS] FILES");
    line(".br");
    line(".B " + name);
    line("JOBS.xlsx");
    line(".SH COMMANDS");
    root.getSubcommands().forEach(this::command);
    line(".SH EXIT STATUS");
    for (Map.Entry<String, String> status : spec.usageMessage().exitCodeList().entrySet()) {
      item(status.getKey(), status.getValue());
    }
  }

  private void command(String name, CommandLine command) {
    CommandSpec spec = command.getCommandSpec();
    if (spec.usageMessage().hidden() || name.equals("help")) {
      return;
    }
    line(".SS " + name);
    line(text(String.join(" ", spec.usageMessage().description())));
    for (PositionalParamSpec parameter : spec.positionalParameters()) {
      item(parameter.paramLabel(), String.join(" ", parameter.description()));
    }
    for (OptionSpec option : spec.options()) {
      String label = option.arity().max() > 0 ? " " + option.paramLabel() : "";
      item(String.join(", ", option.names()) + label, String.join(" ", option.description()));
    }
  }

  private void item(String what, String says) {
    line(".TP");
    line(".B " + text(what));
    line(text(says.replace("%n", " ")));
  }

  /** A line that begins with a dot or a quote is a command; a hyphen is drawn short. */
  private static String text(String words) {
    String safe = words.replace("\\", "\\e").replace("-", "\\-");
    return safe.startsWith(".") || safe.startsWith("'") ? "\\&" + safe : safe;
  }

  private void line(String line) {
    page.append(line).append('\n');
  }
}
