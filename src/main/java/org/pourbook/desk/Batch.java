package org.pourbook.desk;

import java.util.List;
import org.pourbook.buy.PriceBook;
import org.pourbook.job.GivenSheet;
import org.pourbook.job.Job;

/**
 * The sound jobs of an input, the prices, and the input as it was read.
 *
 * @param jobs in the order of the Jobs sheet
 */
public record Batch(
    List<Job> jobs, PriceBook prices, List<GivenSheet> given, List<InputFile> files) {
  public Batch {
    jobs = List.copyOf(jobs);
    given = List.copyOf(given);
    files = List.copyOf(files);
  }

  /** An input file by its name, with the SHA-256 of its bytes in hexadecimal. */
  public record InputFile(String name, String sha256) {}
}
