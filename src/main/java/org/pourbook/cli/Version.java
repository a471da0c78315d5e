package org.pourbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into {@code pourbook-version.properties}. */
final class Version implements IVersionProvider {

  private static final String RESOURCE = "/pourbook-version.properties";

  /** Returns the version number alone, such as {@code 0.1.0}. */
  static String number() {
    Properties properties = new Properties();
    try (InputStream in = Version.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("no " + RESOURCE + " on the class path");
      }
      properties.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties.getProperty("version", "unknown");
  }

  @Override
  public String[] getVersion() {
    return new String[] {"pourbook " + number()};
  }
}
