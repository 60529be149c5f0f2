package faultfinch.machine;

/** Follows one net's level into a trace. */
final class Watch {
  private static final int MIDDLE_MV = 1300;

  final int pin;
  final Trace trace = new Trace();
  private boolean was;
  private boolean any;

  Watch(int pin) {
    this.pin = pin;
  }

  void look(Levels levels) {
    int net = levels.circuit.netOf[pin];
    boolean high = levels.mv[net] > MIDDLE_MV;
    if (!any || high != was) {
      trace.add(levels.nanosecondsAt(levels.now), high);
      was = high;
      any = true;
    }
  }
}
