package faultfinch.bench;

import faultfinch.board.Pad;
import faultfinch.machine.Setup;
import faultfinch.signal.Pin;
import faultfinch.symptom.HandsOn;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;

/** Whether the board does all it should, against a healthy one under the same looks. */
record CheckBoard(Depth depth) implements Act {
  private static final int SOAK_POWER_ONS = 3;
  private static final int SOAK_MINUTES = 30;

  enum Depth {
    QUICK,
    ALL,
    SOAK
  }

  /** What stands on the board for a while must be off it. */
  @Override
  public List<String> places(Patient patient) {
    return patient.rig.empty() ? List.of("") : List.of();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    Set<String> wrong = new LinkedHashSet<>(patient.notBack());
    SortedMap<Look, Reading> healthy =
        patient.survey().readings(Setup.healthy(patient.board, patient.job.seed()));
    patient.switchOn();
    compare(patient, healthy, wrong);
    if (depth == Depth.SOAK) {
      for (int i = 0; i < SOAK_POWER_ONS; i++) {
        patient.switchOff();
        patient.switchOn();
        patient.pass(SOAK_MINUTES);
        patient.shaken = i == 0;
        compare(patient, healthy, wrong);
      }
    }
    if (depth != Depth.QUICK) {
      HandsOn.of(patient.board).forEach(tried -> work(patient, tried, wrong));
    }
    return new Reading.Check(wrong.isEmpty(), new ArrayList<>(wrong));
  }

  private void compare(Patient patient, SortedMap<Look, Reading> healthy, Set<String> wrong) {
    SortedMap<Look, Reading> now = patient.readings();
    for (Look look : patient.looks) {
      Reading right = healthy.get(look);
      if (counts(patient, look) && !now.get(look).feature().equals(right.feature())) {
        wrong.add(look.text() + ": " + now.get(look).text() + ", should be " + right.text());
      }
    }
  }

  private static void work(Patient patient, HandsOn tried, Set<String> wrong) {
    Setup healthy = Setup.healthy(patient.board, patient.job.seed());
    String right = TryOut.of(healthy, tried).text();
    String now = TryOut.of(patient.setup(), tried).text();
    if (!now.equals(right)) {
      wrong.add(tried.name() + ": " + now + ", should be " + right);
    }
  }

  private boolean counts(Patient patient, Look look) {
    return switch (look.kind()) {
      case SCREEN, LISTEN, LAMP -> true;
      case KEY, TYPED, CURRENT -> depth != Depth.QUICK;
      case METER -> depth != Depth.QUICK && supplies(patient, Looks.pad(look.place()));
      case FINGER, PROBE, COUNTER, CONTINUITY, OHMS -> false;
    };
  }

  private static boolean supplies(Patient patient, Pad pad) {
    return patient
        .board
        .part(pad.ref())
        .flatMap(p -> p.type().part().pinout().find(pad.pin()))
        .filter(p -> p.role() == Pin.Role.SUPPLY)
        .isPresent();
  }
}
