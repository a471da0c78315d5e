package org.pourbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.pourbook.book.in.WorkbookKind;

/**
 * The workbooks of a folder, looked at again and again. A workbook counts as saved when it has not
 * changed between two looks, so that none is read half-written.
 */
final class WatchedFolder {

  private static final String ORDER = "-order.xlsx";

  private final Path folder;
  private final Optional<Path> prices;
  private final Map<Path, Stamp> seen = new HashMap<>();
  private final Map<Path, Stamp> done = new HashMap<>();

  /** By which a change is known. */
  private record Stamp(FileTime modified, long size) {}

  /**
   * Watches a folder.
   *
   * @param prices a price book, which is no jobs workbook though it may lie there
   */
  WatchedFolder(Path folder, Optional<Path> prices) {
    this.folder = folder;
    this.prices = prices;
  }

  static Path orderOf(Path jobs) {
    return jobs.resolveSibling(Output.stem(jobs) + ORDER);
  }

  /** Returns the jobs workbooks that were saved since the last look, each once. */
  List<Path> saved() throws IOException {
    List<Path> saved = new ArrayList<>();
    for (Path file : workbooks()) {
      Optional<Stamp> stamp = stamp(file);
      if (stamp.isEmpty() || stamp.get().equals(done.get(file))) {
        continue;
      }
      if (stamp.get().equals(seen.put(file, stamp.get()))) {
        done.put(file, stamp.get());
        if (isNews(file, stamp.get())) {
          saved.add(file);
        }
      }
    }
    return saved;
  }

  private List<Path> workbooks() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(this::mayBeJobs).sorted().toList();
    }
  }

  /** Programs keep locks and drafts beside what they edit, and we write orders there. */
  private boolean mayBeJobs(Path file) {
    String name = String.valueOf(file.getFileName());
    boolean temporary = name.startsWith("~") || name.startsWith(".");
    boolean workbook = name.toLowerCase(Locale.ROOT).endsWith(".xlsx");
    return workbook && !temporary && !name.endsWith(ORDER) && Files.isRegularFile(file);
  }

  /** An order that is newer than the jobs was made of them. */
  private boolean isNews(Path file, Stamp stamp) throws IOException {
    if (prices.isPresent() && Files.exists(prices.get()) && Files.isSameFile(prices.get(), file)) {
      return false;
    }
    Optional<Stamp> order = stamp(orderOf(file));
    boolean made = order.filter(o -> o.modified().compareTo(stamp.modified()) >= 0).isPresent();
    return !made && WorkbookKind.isJobs(file);
  }

  private static Optional<Stamp> stamp(Path file) {
    try {
      BasicFileAttributes of = Files.readAttributes(file, BasicFileAttributes.class);
      return Optional.of(new Stamp(of.lastModifiedTime(), of.size()));
    } catch (IOException e) {
      return Optional.empty(); // gone again
    }
  }
}
