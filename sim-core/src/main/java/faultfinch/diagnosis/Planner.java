package faultfinch.diagnosis;

/** Says what to do next. */
@FunctionalInterface
public interface Planner {

  /** The step to take with these candidates left; there must be one left at least. */
  Choice choose(Field field);
}
