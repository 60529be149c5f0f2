package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.machine.SoundNet;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Healthy boards differ in thresholds, in what their memories wake up with and in how long cells
 * keep it. Their owners see and hear the same.
 */
class TamariskHealthyBoardsTest {
  private static final int BOARDS = Boolean.getBoolean("faultfinch.sweep") ? 16 : 8;
  private static final int CHORD_FROM = 140;
  private static final int CHORD_TO = 700;
  private static final long MS = 1_000_000;

  @Test
  void healthyBoards_atThePrompt_showTheSameFeatures() {
    List<String> first = features(1);
    assertTrue(first.get(0).contains(TamariskRun.NAME), first + "");
    assertTrue(first.get(1).contains("chord of 311 and 523 Hz"), first + "");
    for (int seed = 2; seed <= BOARDS; seed++) {
      assertEquals(first, features(seed), "board " + seed);
    }
  }

  /** What the set shows, what is heard, which steps the firmware has taken, and when. */
  private static List<String> features(int seed) {
    Machine machine = new Machine(Setup.healthy(TamariskRun.BOARD, seed), Machine.Kind.FAST);
    Speaker speaker = Speaker.of(TamariskRun.BOARD).orElseThrow();
    for (int ms = CHORD_FROM; ms <= CHORD_TO; ms += Speaker.SAMPLE_MS) {
      machine.runTo(ms * MS);
      speaker.look(machine);
    }
    Sound sound = speaker.sound(SoundNet.of(machine), CHORD_FROM * MS, CHORD_TO * MS, Ear.RATE);
    List<String> features = new ArrayList<>();
    features.add(Screen.look(machine).says());
    features.add(Ear.hears(sound, CHORD_FROM).stream().map(Heard::says).toList().toString());
    new TreeSet<>(machine.milestones().keySet()).forEach(features::add);
    return features;
  }
}
