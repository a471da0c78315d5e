package org.pourbook.desk;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.buy.OnHand;
import org.pourbook.buy.PriceBook;
import org.pourbook.job.GivenSheet;
import org.pourbook.job.Job;

/**
 * The sound jobs of an input, the prices, and the input as it was read.
 *
 * @param jobs in the order of the Jobs sheet
 * @param onHand boards and bars that are there already
 */
public record Batch(
    List<Job> jobs,
    PriceBook prices,
    List<GivenSheet> given,
    List<InputFile> files,
    List<OnHand> onHand) {
  public Batch {
    jobs = List.copyOf(jobs);
    given = List.copyOf(given);
    files = List.copyOf(files);
    onHand = List.copyOf(onHand);
  }

  /** Makes a batch with nothing on hand. */
  public Batch(List<Job> jobs, PriceBook prices, List<GivenSheet> given, List<InputFile> files) {
    this(jobs, prices, given, files, List.of());
  }

  /** Returns this batch with some of its jobs. */
  Batch of(List<Job> some) {
    return new Batch(some, prices, given, files, onHand);
  }

  /** Returns this batch with boards and bars on hand, and the files that list them. */
  public Batch with(List<OnHand> there, List<InputFile> lists) {
    List<InputFile> all = new ArrayList<>(files);
    all.addAll(lists);
    return new Batch(jobs, prices, given, all, there);
  }

  /** An input file by its name, with the SHA-256 of its bytes in hexadecimal. */
  public record InputFile(String name, String sha256) {}
}
