package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import java.util.List;

/**
 * The lid of the case. While it is on, a hand reaches what stands outside and nothing else.
 *
 * <p>Not modelled: the warmer air under it.
 */
record Lid(boolean off) implements Act {

  @Override
  public List<String> places(Patient patient) {
    return patient.lidOn == off ? List.of("") : List.of();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    patient.lidOn = !off;
    String says = "the lid is " + (off ? "off" : "on");
    return new Words(says, says);
  }

  /** Whether a move needs the lid off. */
  static boolean covers(Move move) {
    return switch (move.kind()) {
      case LOOK ->
          switch (move.asLook().kind()) {
            case SCREEN, LISTEN, LAMP, KEY, TYPED, CURRENT -> false;
            case FINGER, METER, PROBE, COUNTER, CONTINUITY, OHMS -> true;
          };
      case ASK,
          SUPPLY_OFF_LOAD,
          SUPPLY_ON_DUMMY,
          BENCH_SUPPLY,
          SWAP_SUPPLY,
          OWN_SUPPLY,
          NEW_SUPPLY ->
          false;
      case CHECK_LEADS, UNPLUG, PLUG_IN, WRIST_STRAP, LID_OFF, LID_ON -> false;
      case POWER_ON, POWER_OFF, POWER_CYCLE, COLD_STARTS, TYPE, EVERY_KEY, STICKS, TAPE, FILES ->
          false;
      case BENCH_ROM, RETURN_LEADS, BENCH_ROM_OFF, LEADS_OFF -> false;
      case QUICK_CHECK, RETEST, SOAK -> false;
      case CHIP_TEST, CHIP_LOOP, READ_OUT, REFERENCE -> false;
      case INSPECT, INFRA_RED, SCOPE, TRACER, MILLIVOLTS, FLOW, MILLIOHMS, REFIT_CHECK -> true;
      case SUPPLY_MARGIN, HOLD, LOAD, PRESS, SPRAY, WARM_AIR, PIGGYBACK, PIGGYBACK_OFF -> true;
      case LIFT, CUT, RESEAT, CLEAN_CONTACTS, TAKE_OUT, PUT_BACK, FIT_NEW, EXCHANGE -> true;
      case EXCHANGE_TWO,
          STRAIGHTEN,
          SWAP_BACK,
          SET_LINK,
          CLEAN_BOARD,
          CLEAR_BRIDGE,
          REFLOW,
          LINK_TRACK,
          EXCHANGE_SMALL,
          NEW_SOCKET,
          DESOLDER ->
          true;
    };
  }
}
