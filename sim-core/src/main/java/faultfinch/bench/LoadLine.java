package faultfinch.bench;

import java.util.List;

/**
 * A probe left hanging on a line while the board starts: it pulls a little, and what is late on
 * that line is later still. Then it is taken off.
 */
final class LoadLine implements Act {
  private static final int PROBE_OHMS = 100_000;

  @Override
  public List<String> places(Patient patient) {
    return HoldLine.lines(patient);
  }

  @Override
  public Reading perform(Patient patient, String place) {
    patient.switchOff();
    patient.switchOn();
    Reading shown = Shown.of(patient.probed(Looks.pad(place), PROBE_OHMS));
    patient.switchOff();
    patient.switchOn();
    return shown;
  }
}
