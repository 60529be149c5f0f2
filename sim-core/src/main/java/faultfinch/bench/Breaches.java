package faultfinch.bench;

import faultfinch.board.Located;
import faultfinch.board.PlacedPart;
import faultfinch.signal.Technology;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rules of the bench: when one is broken stands here, why it matters stands in data. */
final class Breaches {
  private static final String FILE = "breaches.json";

  private final Map<String, Breach> known = new LinkedHashMap<>();

  Breaches() {
    try (InputStream in = Breaches.class.getResourceAsStream(FILE)) {
      for (Located rule : Located.read(FILE, in.readAllBytes()).items()) {
        String name = rule.get("name").words();
        boolean toPerson = rule.get("to").oneOf(List.of("person", "board")).equals("person");
        known.put(name, new Breach(name, rule.get("reason").words(), toPerson));
      }
    } catch (IOException e) {
      throw new IllegalStateException(FILE + " cannot be read", e);
    }
  }

  /** What a move would break on this board as it is. */
  List<Breach> of(Patient patient, Move move) {
    List<Breach> broken = new ArrayList<>();
    switch (move.kind()) {
      case TAKE_OUT, PUT_BACK, FIT_NEW, EXCHANGE, RESEAT, CLEAN_CONTACTS, STRAIGHTEN, SWAP_BACK -> {
        add(broken, patient.powered, "power on while a chip moves");
        add(broken, !patient.strapped && isMos(patient, move.place()), "no wrist strap");
      }
      case NEW_SOCKET, DESOLDER -> {
        add(broken, patient.powered, "power on while soldering");
        add(broken, !patient.strapped && isMos(patient, move.place()), "no wrist strap");
      }
      case REFLOW, LINK_TRACK, CLEAR_BRIDGE, EXCHANGE_SMALL, LIFT, CUT ->
          add(broken, patient.powered, "power on while soldering");
      case POWER_ON, HOLD, LOAD, COLD_STARTS, QUICK_CHECK, RETEST, SOAK ->
          add(broken, !patient.powered && isUnchecked(patient), "supply not checked");
      case BENCH_ROM -> {
        add(broken, patient.powered && !patient.rig.benchRom(), "plug with the power on");
        add(broken, !patient.powered && isUnchecked(patient), "supply not checked");
      }
      case PIGGYBACK, PIGGYBACK_OFF -> {
        add(broken, patient.powered, "power on while a chip moves");
        add(broken, !patient.strapped && isMos(patient, move.place()), "no wrist strap");
      }
      case CHIP_TEST, CHIP_LOOP, READ_OUT, REFERENCE ->
          add(broken, !patient.strapped && isMos(patient, move.place()), "no wrist strap");
      case EXCHANGE_TWO -> {
        add(broken, patient.powered, "power on while a chip moves");
        boolean mos = Arrays.stream(move.place().split("-")).anyMatch(r -> isMos(patient, r));
        add(broken, !patient.strapped && mos, "no wrist strap");
      }
      case RETURN_LEADS, BENCH_ROM_OFF, LEADS_OFF, UNPLUG, PLUG_IN ->
          add(broken, patient.powered, "plug with the power on");
      case LOOK -> look(patient, move.asLook(), broken);
      case MILLIOHMS -> add(broken, patient.powered, "ohms with the power on");
      case LID_OFF, LID_ON, TYPE, EVERY_KEY, STICKS, TAPE, FILES, TRACER -> {
        // The case and its keys are there to be handled, a tracer's probe is light.
      }
      case ASK, INSPECT, REFIT_CHECK, MILLIVOLTS, FLOW, CHECK_LEADS, INFRA_RED, SCOPE -> {
        // These only look.
      }
      case SUPPLY_OFF_LOAD, SUPPLY_ON_DUMMY, BENCH_SUPPLY, SWAP_SUPPLY, OWN_SUPPLY, NEW_SUPPLY -> {
        // A supply is handled away from the board.
      }
      case SUPPLY_MARGIN, PRESS, SPRAY, WARM_AIR -> {
        // Neither more volts nor more heat than the parts stand.
      }
      case WRIST_STRAP, POWER_OFF, POWER_CYCLE, SET_LINK, CLEAN_BOARD -> {
        // These break nothing.
      }
    }
    return List.copyOf(broken);
  }

  private void look(Patient patient, Look look, List<Breach> broken) {
    add(broken, patient.powered && look.kind().unpowered(), "ohms with the power on");
    if (look.kind() == Instruments.FINGER && patient.powered) {
      add(
          broken,
          patient.readings().get(look) instanceof Reading.Touch touch && touch.burns(),
          "finger on a hot part");
    }
  }

  private void add(List<Breach> broken, boolean is, String name) {
    if (is) {
      broken.add(known.get(name));
    }
  }

  /** Once plugged, the harm is done or there was none. */
  private static boolean isUnchecked(Patient patient) {
    return patient.source == Patient.Source.OWN
        && !patient.plugged
        && !(patient.checkedOffLoad && patient.checkedOnDummy);
  }

  private static boolean isMos(Patient patient, String place) {
    String ref = place.split("[.-]", 2)[0];
    return patient
        .board
        .part(ref)
        .map(PlacedPart::type)
        .map(t -> t.part().pinout().technology())
        .filter(t -> t == Technology.NMOS || t == Technology.CMOS)
        .isPresent();
  }
}
