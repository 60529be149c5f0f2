package faultfinch.machine;

/** Follows one net's level into a trace. */
final class Watch {
  private final int pin;
  private final int above;
  final Trace trace = new Trace();
  private boolean was;
  private boolean any;

  Watch(int pin, int above) {
    this.pin = pin;
    this.above = above;
  }

  void look(Levels levels) {
    int net = levels.circuit.netOf[pin];
    boolean high = levels.mv[net] > above;
    if (!any || high != was) {
      trace.add(levels.nanosecondsAt(levels.now), high);
      was = high;
      any = true;
    }
  }
}
