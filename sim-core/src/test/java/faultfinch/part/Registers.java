package faultfinch.part;

import faultfinch.signal.Phase;

/** Reads and writes the registers of a bus device that is alone on the bench. */
final class Registers {
  private final BenchPins bench;

  Registers(BenchPins bench) {
    this.bench = bench.high("RES/", "CS/", "RW");
  }

  /** Writes in the cycle now. */
  void write(int register, int value) {
    bench.bus("A", register).bus("D", value).low("CS/", "RW");
    clockFalls();
    bench.high("CS/", "RW");
  }

  /** Reads in the cycle now, with what a read does besides. */
  int read(int register) {
    bench.bus("A", register).low("CS/").high("RW", "PHI2");
    int value = bench.outBus("D");
    clockFalls();
    bench.high("CS/");
    return value;
  }

  /** The end of a cycle. */
  void clockFalls() {
    bench.low("PHI2");
    bench.before(bench.in());
    bench.high("PHI2");
    bench.commit(Phase.C_END);
    bench.low("PHI2");
  }
}
