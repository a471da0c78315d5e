package org.pourbook.desk;

import java.util.List;
import org.pourbook.buy.Supplement;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.TakeOff;

/**
 * What a revision found: everything that the supplement holds.
 *
 * @param estimate of what is ordered besides, with all jobs as they are now
 * @param newBolts the jobs with only those plates that are new or changed
 */
public record Revised(
    List<FoundChange> changes,
    Estimate estimate,
    Supplement supplement,
    List<JobRevision> totals,
    List<TakeOff> newBolts) {
  public Revised {
    changes = List.copyOf(changes);
    totals = List.copyOf(totals);
    newBolts = List.copyOf(newBolts);
  }

  /**
   * A job's money: before + goods + fees + tax − credit − credit tax = total, to the cent.
   *
   * @param before total of the earlier order
   * @param goods ordered besides; fees and tax of the same
   * @param credit of what can be sent back, and the tax on it
   * @param unpriced rows ordered besides without a price
   * @param openChanges owner's changes that no section has taken up
   */
  public record JobRevision(
      String job,
      String description,
      Money before,
      Money goods,
      Money fees,
      Money tax,
      Money credit,
      Money creditTax,
      int unpriced,
      int openChanges) {

    /** Returns what is ordered besides, with its fees and tax. */
    public Money besides() {
      return goods.plus(fees).plus(tax);
    }

    /** Returns what can be sent back, with its tax. */
    public Money back() {
      return credit.plus(creditTax);
    }

    public Money total() {
      return before.plus(besides()).minus(back());
    }
  }
}
