package org.pourbook.book.out;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** The documents that rules cite, by the keys of {@code sources.md}. */
final class Documents {

  private static final String RESOURCE = "/sources.md";
  private static final int CELLS = 3;

  private final Map<String, String> byKey;

  private Documents(Map<String, String> byKey) {
    this.byKey = Map.copyOf(byKey);
  }

  /** Returns the documents of the table that the build put on the class path. */
  static Documents read() {
    Map<String, String> byKey = new HashMap<>();
    try (InputStream in = Documents.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("no " + RESOURCE + " on the class path");
      }
      BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        String[] cells = line.strip().replaceAll("^\\||\\|$", "").split("\\|");
        if (line.startsWith("|") && cells.length == CELLS) {
          byKey.put(cells[0].strip(), cells[1].strip().replace("*", ""));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Documents(byKey);
  }

  boolean has(String key) {
    return byKey.containsKey(key);
  }

  /** Returns the document's name with the place in it; nothing for a rule without a document. */
  String cited(String key, String at) {
    String document = byKey.getOrDefault(key, key);
    return document.isEmpty() || at.isEmpty() ? document + at : document + ": " + at;
  }
}
