package faultfinch.bench;

import java.util.Arrays;
import java.util.Optional;

/** Every kind of move at the bench: looks first, then what changes the board, cheap before dear. */
public enum Moves {
  LOOK("look"),
  ASK("ask"),
  INSPECT("inspect"),
  SUPPLY_OFF_LOAD("supply off load"),
  SUPPLY_ON_DUMMY("supply on dummy load"),
  BENCH_SUPPLY("bench supply"),
  SWAP_SUPPLY("swap the supply"),
  OWN_SUPPLY("own supply"),
  WRIST_STRAP("wrist strap"),
  POWER_ON("power on"),
  POWER_OFF("power off"),
  POWER_CYCLE("power cycle"),
  SCOPE("scope"),
  HOLD("hold"),
  LIFT("lift"),
  RESEAT("reseat"),
  CLEAN_CONTACTS("clean contacts"),
  TAKE_OUT("take out"),
  PUT_BACK("put back"),
  FIT_NEW("fit new"),
  EXCHANGE("exchange"),
  STRAIGHTEN("straighten"),
  SWAP_BACK("swap back"),
  SET_LINK("set link"),
  CLEAN_BOARD("clean board"),
  CLEAR_BRIDGE("clear bridge"),
  REFLOW("reflow"),
  LINK_TRACK("link track"),
  EXCHANGE_SMALL("exchange small part"),
  NEW_SUPPLY("new supply"),
  NEW_SOCKET("new socket"),
  DESOLDER("desolder and socket"),
  QUICK_CHECK("quick check"),
  RETEST("retest all"),
  SOAK("soak");

  private final String word;

  Moves(String word) {
    this.word = word;
  }

  /** As it begins the text of a move, and as the price list names it. */
  public String word() {
    return word;
  }

  /** The kind of this word, if there is one. */
  public static Optional<Moves> named(String word) {
    return Arrays.stream(values()).filter(m -> m.word.equals(word)).findFirst();
  }
}
