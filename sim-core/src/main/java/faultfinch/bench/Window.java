package faultfinch.bench;

/** What cycles are watched for, phase by phase. */
enum Window {
  /** A step of the firmware. */
  STEP(128),

  /** What a board that waits does but once a picture, see {@link Seldom}. */
  SELDOM(128),

  /** The meter comes to rest. */
  IDLE(512);

  private final int cycles;

  Window(int cycles) {
    this.cycles = cycles;
  }

  /** How many it lasts. */
  int cycles() {
    return cycles;
  }
}
