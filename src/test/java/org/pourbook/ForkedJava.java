package org.pourbook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * A class of the test's class path to be run in a Java of its own, so that its heap, its limits,
 * its machine and its end are not those of the tests.
 *
 * @param before a program with its arguments that is to run the Java, or none
 * @param java the program {@code java}
 * @param options of Java
 * @param environment variables besides those of the tests
 */
public record ForkedJava(
    List<String> before,
    String java,
    List<String> options,
    Map<String, String> environment,
    Class<?> main) {

  /** Only against a test that hangs: many times what the slowest needs. */
  private static final long MOST_MINUTES = 20;

  /** Java adds these to its options, and says so on its standard error. */
  private static final List<String> OPTIONS_FROM_OUTSIDE =
      List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS", "_JAVA_OPTIONS");

  /**
   * How a run ended.
   *
   * @param status its exit status
   * @param said standard output and standard error
   */
  public record Ended(int status, String said) {}

  /** Returns a run by the Java that runs the tests. */
  public static ForkedJava of(Class<?> main, String... options) {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    return new ForkedJava(List.of(), java, List.of(options), Map.of(), main);
  }

  /** Returns the same run by a program that is given the command as its last arguments. */
  public ForkedJava by(String... program) {
    return new ForkedJava(List.of(program), java, options, environment, main);
  }

  /** Returns the same run by another Java. */
  public ForkedJava by(Path otherJava) {
    return new ForkedJava(before, otherJava.toString(), options, environment, main);
  }

  /** Returns the same run with one variable of its environment. */
  public ForkedJava with(String variable, String value) {
    return new ForkedJava(before, java, options, Map.of(variable, value), main);
  }

  /**
   * Starts a run.
   *
   * @param said what standard output and standard error are written into
   * @param args written as text
   */
  public Process start(Path said, Object... args) throws IOException {
    List<String> command = new ArrayList<>(before);
    command.add(java);
    command.addAll(options);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    Arrays.stream(args).map(Object::toString).forEach(command::add);
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile());
    builder.environment().keySet().removeAll(OPTIONS_FROM_OUTSIDE);
    builder.environment().putAll(environment);
    return builder.start();
  }

  /** Returns how a run ends; fails if it does not. */
  public Ended run(Object... args) throws IOException, InterruptedException {
    Path said = Files.createTempFile("said", ".txt");
    try {
      Process process = start(said, args);
      boolean ended = process.waitFor(MOST_MINUTES, TimeUnit.MINUTES);
      process.destroyForcibly();
      assertTrue(ended, () -> "still running: " + main.getName() + " " + List.of(args));
      return new Ended(process.exitValue(), Files.readString(said));
    } finally {
      Files.delete(said);
    }
  }
}
