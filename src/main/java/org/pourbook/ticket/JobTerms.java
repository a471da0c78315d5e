package org.pourbook.ticket;

import java.util.Map;
import org.pourbook.takeoff.MaterialKey;

/**
 * The terms of each job, and of each name that jobs share.
 *
 * @param byPlace by job's code and by shared name, as {@link MaterialKey#normal} compares them
 * @param others hold for what is no job's
 */
public record JobTerms(Map<String, Terms> byPlace, Terms others) {
  public JobTerms {
    byPlace = Map.copyOf(byPlace);
  }

  /** Returns the same terms for every job. */
  public static JobTerms all(Terms terms) {
    return new JobTerms(Map.of(), terms);
  }

  Terms of(String place) {
    return byPlace.getOrDefault(MaterialKey.normal(place), others);
  }
}
