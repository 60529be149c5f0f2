package faultfinch.bench;

import faultfinch.fault.Clamp;
import java.util.List;

/**
 * A probe left hanging on a line while the board starts: its input loads the line. Then it is taken
 * off.
 *
 * <p>Not modelled: the probe's capacitance.
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
    Reading shown = Shown.of(patient.setup(new Clamp(Looks.pad(place), false, PROBE_OHMS)));
    patient.switchOff();
    patient.switchOn();
    return shown;
  }
}
