package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.symptom.BenchReport;
import java.util.List;

/** The bench ROM and the leads that go with it, plugged in and taken off. */
record BenchRomMove(Way way) implements Act {

  enum Way {
    /** The board is switched on and one round is read. */
    PLUG_IN,
    TAKE_OFF,
    LEADS_ON,
    LEADS_OFF
  }

  @Override
  public List<String> places(Patient patient) {
    boolean here = patient.board.benchRom().isPresent();
    boolean leads = here && !patient.board.benchRom().orElseThrow().returnLeads().isEmpty();
    boolean can =
        switch (way) {
          case PLUG_IN -> here;
          case TAKE_OFF -> patient.rig.benchRom();
          case LEADS_ON -> leads && !patient.rig.returnLeads();
          case LEADS_OFF -> patient.rig.returnLeads();
        };
    return can ? List.of("") : List.of();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    switch (way) {
      case PLUG_IN -> {
        return report(patient);
      }
      case TAKE_OFF -> patient.rig.benchRom(false);
      case LEADS_ON -> patient.rig.returnLeads(true);
      case LEADS_OFF -> patient.rig.returnLeads(false);
    }
    patient.changed();
    String says =
        switch (way) {
          case PLUG_IN, TAKE_OFF -> "the bench ROM is off";
          case LEADS_ON -> "the return leads join the ports";
          case LEADS_OFF -> "the return leads are off";
        };
    return new Words(says, says);
  }

  private static Reading report(Patient patient) {
    patient.switchOff();
    patient.rig.benchRom(true);
    patient.switchOn();
    return BenchRom.of(BenchReport.of(patient.setup()));
  }
}
