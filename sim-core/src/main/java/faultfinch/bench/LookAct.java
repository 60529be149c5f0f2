package faultfinch.bench;

import faultfinch.bench.Reading.Light;
import faultfinch.bench.Reading.Words;
import faultfinch.machine.Finger;
import java.util.List;
import java.util.OptionalInt;

/** A look that changes nothing. */
final class LookAct implements Act {

  @Override
  public List<String> places(Patient patient) {
    return patient.looks.stream().filter(l -> !isGone(patient, l)).map(Look::text).toList();
  }

  @Override
  public boolean takes(Patient patient, String place) {
    Look look = Look.parse(place);
    return patient.looks.contains(look) && !isGone(patient, look);
  }

  /** A chip that is out has no legs to touch, and a module has its own program. */
  private static boolean isGone(Patient patient, Look look) {
    return switch (look.kind()) {
      case SCREEN, LISTEN, LAMP, CURRENT, OHMS -> false;
      // The module's own program does not ask the keys one by one.
      case KEY, TYPED -> patient.rig.benchRom();
      case FINGER -> patient.isOut(look.place());
      case METER, COUNTER -> patient.isOut(Looks.pad(look.place()).ref());
      case PROBE -> !Looks.atPad(look.place()) && patient.isOut(Looks.pad(look.place()).ref());
      case CONTINUITY ->
          Looks.dash(look.place()) < 0 && patient.isOut(Looks.pad(look.place()).ref());
    };
  }

  @Override
  public Reading perform(Patient patient, String place) {
    Look look = Look.parse(place);
    if (look.kind().unpowered()) {
      return patient.powered
          ? new Words("jumps about and means nothing", "nothing")
          : Unpowered.of(patient.setup(), look);
    }
    return patient.powered ? patient.readings().get(look) : switchedOff(look);
  }

  private static Reading switchedOff(Look look) {
    return switch (look.kind()) {
      case SCREEN, TYPED -> new Reading.Picture("dark", "dark", List.of());
      case LISTEN -> new Reading.Sound("silent", "silent", List.of());
      case LAMP -> new Words("dark", "dark");
      case KEY -> new Words("nothing happens", "nothing");
      case CURRENT -> Dial.current(0);
      case FINGER -> new Reading.Touch(Finger.COLD, false);
      case METER -> Dial.volts(0);
      case PROBE -> new Reading.Level(Light.NONE);
      case COUNTER -> Dial.frequency(0);
      case CONTINUITY -> new Words("open", "open");
      case OHMS -> Dial.ohms(OptionalInt.empty());
    };
  }
}
