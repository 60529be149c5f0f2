package faultfinch.bench;

import faultfinch.fault.RepairAction;
import java.util.Arrays;
import java.util.Optional;

/** Every kind of move at the bench: looks first, then what changes the board, cheap before dear. */
public enum Moves {
  LOOK("look", new LookAct()),
  ASK("ask", new AskOwner()),
  INSPECT("inspect", new Inspect()),
  SUPPLY_OFF_LOAD("supply off load", new SupplyCheck(false)),
  SUPPLY_ON_DUMMY("supply on dummy load", new SupplyCheck(true)),
  BENCH_SUPPLY("bench supply", new ChooseSupply(Patient.Source.BENCH)),
  SWAP_SUPPLY("swap the supply", new ChooseSupply(Patient.Source.BORROWED)),
  OWN_SUPPLY("own supply", new ChooseSupply(Patient.Source.OWN)),
  WRIST_STRAP("wrist strap", new WristStrap()),
  POWER_ON("power on", new PowerSwitch(PowerSwitch.Way.ON)),
  POWER_OFF("power off", new PowerSwitch(PowerSwitch.Way.OFF)),
  POWER_CYCLE("power cycle", new PowerSwitch(PowerSwitch.Way.CYCLE)),
  SCOPE("scope", new Scope()),
  HOLD("hold", new HoldLine()),
  LIFT("lift", new LiftPin()),
  RESEAT("reseat", new Reseat(Prices.Chances.RESEATING_CURES)),
  CLEAN_CONTACTS("clean contacts", new Reseat(Prices.Chances.CLEANING_CURES)),
  TAKE_OUT("take out", new ChipMove(ChipMove.Way.TAKE_OUT)),
  PUT_BACK("put back", new ChipMove(ChipMove.Way.PUT_BACK)),
  FIT_NEW("fit new", new ChipMove(ChipMove.Way.FIT_NEW)),
  EXCHANGE("exchange", new ChipMove(ChipMove.Way.EXCHANGE)),
  STRAIGHTEN("straighten", new Repair(RepairAction.Kind.STRAIGHTEN_LEG)),
  SWAP_BACK("swap back", new Repair(RepairAction.Kind.SWAP_BACK)),
  SET_LINK("set link", new Repair(RepairAction.Kind.SET_LINK)),
  CLEAN_BOARD("clean board", new Repair(RepairAction.Kind.CLEAN)),
  CLEAR_BRIDGE("clear bridge", new Repair(RepairAction.Kind.CLEAR_BRIDGE)),
  REFLOW("reflow", new Repair(RepairAction.Kind.REFLOW)),
  LINK_TRACK("link track", new Repair(RepairAction.Kind.LINK_TRACK)),
  EXCHANGE_SMALL("exchange small part", new Repair(RepairAction.Kind.EXCHANGE_SMALL)),
  NEW_SUPPLY("new supply", new Repair(RepairAction.Kind.SUPPLY)),
  NEW_SOCKET("new socket", new Repair(RepairAction.Kind.NEW_SOCKET)),
  DESOLDER("desolder and socket", new Repair(RepairAction.Kind.DESOLDER_AND_SOCKET)),
  QUICK_CHECK("quick check", new CheckBoard(CheckBoard.Depth.QUICK)),
  RETEST("retest all", new CheckBoard(CheckBoard.Depth.ALL)),
  SOAK("soak", new CheckBoard(CheckBoard.Depth.SOAK));

  private final String word;

  private final Act act;

  Moves(String word, Act act) {
    this.word = word;
    this.act = act;
  }

  Act act() {
    return act;
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
