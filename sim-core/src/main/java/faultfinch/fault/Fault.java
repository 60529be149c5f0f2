package faultfinch.fault;

/**
 * One thing that is wrong, as an identity: equal faults have equal text. What becomes of it (found,
 * dropped, equivalent to another) is kept in tables by fault, never in it.
 */
public interface Fault {

  /** The one text form, read back by {@link FaultKinds#parse}. */
  String text();

  /** Reference of the part, or the net's or lead's name, that a repair would touch. */
  String place();

  /** When it shows. */
  default Condition condition() {
    return Condition.ALWAYS;
  }

  /** Carries it out on a board being compiled. */
  void applyTo(Harm harm);
}
