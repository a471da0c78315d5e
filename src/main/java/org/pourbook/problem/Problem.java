package org.pourbook.problem;

/**
 * Something in the input that a person must look at.
 *
 * @param job the code of the job it belongs to, empty when none is known
 * @param found what was read
 * @param expected what would be right
 */
public record Problem(Place place, String job, String found, String expected, Effect effect) {

  /** What the tool did about it. */
  public enum Effect {
    JOB_LEFT_OUT("job left out"),
    ROW_LEFT_OUT("row left out"),
    NOTE("note");

    private final String label;

    Effect(String label) {
      this.label = label;
    }

    /** Returns the words of the Problems sheet. */
    public String label() {
      return label;
    }
  }

  /** Returns whether something could not be used, so that the run ends with status 3. */
  public boolean refused() {
    return effect != Effect.NOTE;
  }

  @Override
  public String toString() {
    return place
        + ": found "
        + Quoted.of(found)
        + "; expected "
        + expected
        + " ("
        + effect.label()
        + ")";
  }
}
