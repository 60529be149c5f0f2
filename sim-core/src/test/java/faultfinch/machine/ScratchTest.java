package faultfinch.machine;

import faultfinch.board.*;
import faultfinch.fault.*;
import faultfinch.symptom.Screen;
import java.util.*;
import java.util.stream.*;
import org.junit.jupiter.api.Test;

class ScratchTest {
  static final Board B = BoardReader.shipped("tamarisk");
  static Board brick(int mv) {
    Supply s = B.supply();
    Supply t = new Supply(mv, s.ohms(), s.jackNet(), s.jack(), s.railNet(), s.regulator(), s.groundNet(), s.others(), s.poles());
    return new Board(B.name(), B.title(), B.maker(), B.about(), B.hertz(), B.crystal(), B.phaseNanoseconds(), B.width(), B.height(), B.parts(), B.nets(), t, B.firmware(), B.milestones(), B.exercise(), B.rightDisplay(), B.worthTakingOut(), 0);
  }
  static void show(Board b, Machine.Kind k, String... faults) {
    List<Fault> f = Stream.of(faults).map(x -> FaultKinds.parse(x, b)).toList();
    long t0 = System.currentTimeMillis();
    Machine m = new Machine(Setup.healthy(b, 1).with(f), k);
    Power p = m.power();
    m.runTo(200_000_000L);
    System.out.println(k + " " + Arrays.toString(faults) + " I=" + p.currentMilliamps() + " raw " + p.afterDiodeMillivolts() + " rail " + p.railMillivolts() + " U4 " + Arrays.toString(p.milliseconds("U4")) + " U27 " + Arrays.toString(p.milliseconds("U27")) + " U34 " + Arrays.toString(p.milliseconds("U34"))+ " killed " + p.killed() + " strained " + p.strained().size());
    System.out.println("   " + m.milestones().keySet() + " digest " + m.digest() + " byPhases " + m.byPhases() + " of " + m.cycles() + " ms " + (System.currentTimeMillis() - t0));
    try { System.out.println("   " + Screen.look(m).says().replaceAll("(.{300}).*", "$1")); } catch (RuntimeException e) { System.out.println(e); }
  }
  @Test
  void scratch() {
    String what = System.getProperty("scratch", "power");
    if (what.equals("power")) {
      for (Machine.Kind k : Machine.Kind.values()) {
      show(B, k);
      show(B, k, "brick: ripples");
      show(B, k, "C1: open");
      show(B, k, "brick: low");
      show(brick(7750), k);
      show(brick(7600), k);
      show(brick(7300), k);
      show(brick(9500), k, "VR1.GND: open joint");
      }
    }
  }
}
