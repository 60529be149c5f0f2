package faultfinch.fault;

import faultfinch.board.Pad;

/** Ways of harming a board while it is compiled; the machine carries them out. */
public interface Harm {

  /** An input misjudges its net and always reads one level. */
  void reads(Pad pin, boolean high);

  /** An output's driver is always on, in its class, selected or not. */
  void drives(Pad pin, boolean high);

  /** Something pulls at the part's side of a pin: millivolts behind ohms (1 or more). */
  void load(Pad pin, int millivolts, int ohms);

  /** The part's pin no longer meets its pad. */
  void open(Pad pin);

  /** A piece of track between two pads of one net is cut. */
  void cut(Pad from, Pad to);

  /** Two pads meet through some ohms (1 or more). */
  void bridge(Pad one, Pad other, int ohms);

  /** The part does nothing: its outputs let go, its state does not change. */
  void dead(String ref);

  /** The part is not there. */
  void absent(String ref);

  /** A stored bit pattern always reads with these bits cleared and set. */
  void cell(String ref, int index, int clear, int set);

  /** A cell of a dynamic memory does not keep what it is given, in a way the part's page names. */
  void cellDefect(String ref, int index, String way);

  /** A byte of a programmed part was programmed wrong. */
  void programmed(String ref, int index, int value);

  /** The part has one of the defects its page lists. */
  void defect(String ref, String name);

  /** The part's outputs follow its inputs this many nanoseconds late, at 25 degrees and 5 V. */
  void slow(String ref, int nanoseconds);

  /** The part's column strobe follows its row strobe by so little, at 25 degrees and 5 V. */
  void race(String ref, int nanoseconds);

  /** A two-terminal element no longer joins anything. */
  void elementOpen(String ref);

  /** An element joins its first two terminals through a few ohms. */
  void elementShort(String ref, int ohms);

  /** A resistor's value is off: per cent of what is printed. */
  void elementDrift(String ref, int percent);

  /** The oscillator gives no clock. */
  void clockDead();

  /** The oscillator runs at this share of its frequency, in per mille. */
  void clockOff(int perMille);

  /** The brick has other no-load millivolts and source milliohms than it should. */
  void brick(int noLoadMillivolts, int milliohms);

  /** The capacitor inside the brick has only so many per cent left. */
  void brickCapacitor(int percent);

  /** A regulator's output is fixed at this many millivolts, or follows its input less dropout. */
  void regulator(String ref, RegulatorHarm harm);

  /** The supply lead or fuse passes nothing. */
  void supplyOpen();

  /** What a regulator can do wrong. */
  enum RegulatorHarm {
    DEAD,
    LOW,
    SHORTED
  }
}
