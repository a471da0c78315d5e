package org.pourbook.cut;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The instances of {@code instances.json} with their proven optima. */
record Instance(String id, CutJob job, long optimumMicros) {

  private static final Pattern OBJECT =
      Pattern.compile(
          "\"id\": \"([^\"]+)\".*?\"kerf\": (\\d+), \"stock\": \\[(.*?)\\], \"demand\": \\[(.*?)\\],"
              + " \"optimum\": (\\d+)");
  private static final Pattern ROW = Pattern.compile("\\[(\\d+), (\\d+)(?:, (\\d+|null))?\\]");

  /**
   * Whatever their unit, lengths are taken as sixteenths: planning depends on their ratios only.
   */
  static List<Instance> all() {
    List<Instance> all = new ArrayList<>();
    Matcher object = OBJECT.matcher(text());
    while (object.find()) {
      CutJobs job = new CutJobs().kerf(Long.parseLong(object.group(2)));
      Matcher stock = ROW.matcher(object.group(3) + "]");
      while (stock.find()) {
        String limit = stock.group(3);
        job.stock(
            Long.parseLong(stock.group(1)),
            Long.parseLong(stock.group(2)),
            limit.equals("null") ? Integer.MAX_VALUE : Integer.parseInt(limit));
      }
      Matcher piece = ROW.matcher(object.group(4) + "]");
      while (piece.find()) {
        job.piece(Long.parseLong(piece.group(1)), Integer.parseInt(piece.group(2)));
      }
      all.add(new Instance(object.group(1), job.build(), Long.parseLong(object.group(5)) * 10_000));
    }
    return all;
  }

  @Override
  public String toString() {
    return id;
  }

  private static String text() {
    try (InputStream in = Instance.class.getResourceAsStream("instances.json")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
