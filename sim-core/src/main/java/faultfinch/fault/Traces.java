package faultfinch.fault;

import faultfinch.board.Pad;
import java.util.Set;
import java.util.TreeSet;

/**
 * Writes down what a fault does, said so that faults that do the same to every level of the board
 * say it in the same words: a load names its net, a bridge its two nets.
 */
final class Traces implements Harm {
  /** Of what no input can tell from a sound board. */
  static final String NOTHING = "nothing";

  private final Anatomy anatomy;
  private final Set<String> said = new TreeSet<>();

  private Traces(Anatomy anatomy) {
    this.anatomy = anatomy;
  }

  static Set<String> of(Fault fault, Anatomy anatomy) {
    Traces traces = new Traces(anatomy);
    fault.applyTo(traces);
    return traces.said;
  }

  static String openTrace(String pad) {
    return "open " + pad;
  }

  static String cutTrace(String segment) {
    return "cut " + segment;
  }

  static String elementOpenTrace(String ref) {
    return "element open " + ref;
  }

  static String readsTrace(String pin, boolean high) {
    return "reads " + pin + " " + high;
  }

  static String drivesTrace(String pin, boolean high) {
    return "drives " + pin + " " + high;
  }

  private String net(Pad pad) {
    return anatomy.net(pad).name();
  }

  @Override
  public void reads(Pad pin, boolean high) {
    said.add(readsTrace(pin.text(), high));
  }

  @Override
  public void drives(Pad pin, boolean high) {
    said.add(drivesTrace(pin.text(), high));
  }

  @Override
  public void load(Pad pin, int millivolts, int ohms) {
    said.add(
        anatomy
            .plain(net(pin))
            .flatMap(n -> n.trace(millivolts, ohms, anatomy))
            .orElse("load " + net(pin) + " " + millivolts + " " + ohms));
  }

  @Override
  public void open(Pad pin) {
    said.add(openTrace(pin.text()));
  }

  @Override
  public void cut(Pad from, Pad to) {
    said.add(cutTrace(from.text() + "-" + to.text()));
  }

  @Override
  public void bridge(Pad one, Pad other, int ohms) {
    String a = net(one);
    String b = net(other);
    said.add("bridge " + (a.compareTo(b) < 0 ? a + " " + b : b + " " + a) + " " + ohms);
  }

  @Override
  public void dead(String ref) {
    said.add("dead " + ref);
  }

  @Override
  public void absent(String ref) {
    said.add("absent " + ref);
  }

  @Override
  public void cell(String ref, int index, int clear, int set) {
    said.add("cell " + ref + " " + index + " " + clear + " " + set);
  }

  @Override
  public void cellDefect(String ref, int index, String way) {
    said.add("cell " + ref + " " + index + " " + way);
  }

  @Override
  public void programmed(String ref, int index, int value) {
    said.add("programmed " + ref + " " + index + " " + value);
  }

  @Override
  public void defect(String ref, String name) {
    said.add("defect " + ref + " " + name);
  }

  @Override
  public void slow(String ref, int nanoseconds) {
    said.add("slow " + ref + " " + nanoseconds);
  }

  @Override
  public void race(String ref, int nanoseconds) {
    said.add("race " + ref + " " + nanoseconds);
  }

  @Override
  public void elementOpen(String ref) {
    said.add(elementOpenTrace(ref));
  }

  @Override
  public void elementShort(String ref, int ohms) {
    said.add("element short " + ref + " " + ohms);
  }

  @Override
  public void elementDrift(String ref, int percent) {
    said.add("element drift " + ref + " " + percent);
  }

  @Override
  public void clockDead() {
    said.add("clock dead");
  }

  @Override
  public void clockOff(int perMille) {
    said.add("clock off " + perMille);
  }

  @Override
  public void brick(int noLoadMillivolts, int milliohms) {
    said.add("brick " + noLoadMillivolts + " " + milliohms);
  }

  @Override
  public void brickCapacitor(int percent) {
    said.add("brick capacitor " + percent);
  }

  @Override
  public void regulator(String ref, RegulatorHarm harm) {
    said.add("regulator " + ref + " " + harm);
  }

  @Override
  public void supplyOpen() {
    said.add("supply open");
  }
}
