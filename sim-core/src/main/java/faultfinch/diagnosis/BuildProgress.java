package faultfinch.diagnosis;

/** Told how far the building of a dictionary is, and asked whether it should go on. */
@FunctionalInterface
public interface BuildProgress {

  /** Whether to go on after {@code done} of {@code all} rows. */
  boolean goOn(int done, int all);
}
