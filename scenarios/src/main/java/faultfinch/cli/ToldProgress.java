package faultfinch.cli;

import faultfinch.diagnosis.BuildProgress;
import java.util.function.LongSupplier;

/** Tells now and then how far a build is and how long the rest takes, if it goes on like this. */
final class ToldProgress implements BuildProgress {
  private static final int STEPS_TOLD = 100;
  private static final double NANOSECONDS_A_MINUTE = 60e9;

  private final Terminal terminal;
  private final LongSupplier clock;
  private long from;
  private int fromRun;

  /**
   * @param clock nanoseconds
   */
  ToldProgress(Terminal terminal, LongSupplier clock) {
    this.terminal = terminal;
    this.clock = clock;
    from = clock.getAsLong();
  }

  @Override
  public boolean goOn(int done, int all) {
    if ((long) done * STEPS_TOLD / all != (done - 1L) * STEPS_TOLD / all) {
      long now = clock.getAsLong();
      double each = (now - from) / (double) Math.max(1, done - fromRun);
      long minutes = (long) Math.ceil(each * (all - done) / NANOSECONDS_A_MINUTE);
      terminal.err().println(terminal.words().say("dictionary.progress", done, all, minutes));
      from = now;
      fromRun = done;
    }
    return true;
  }
}
