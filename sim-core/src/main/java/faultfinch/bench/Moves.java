package faultfinch.bench;

import faultfinch.board.Drill;
import faultfinch.fault.RepairAction;
import faultfinch.symptom.EveryKey;
import java.util.Arrays;
import java.util.Optional;

/** Every kind of move at the bench: looks first, then what changes the board, cheap before dear. */
public enum Moves {
  LOOK("look", Use.LOOK, "a look that changes nothing", new LookAct()),
  ASK("ask", Use.LOOK, "what the owner answers to one question", new AskOwner()),
  LID_OFF("lid off", Use.HANDLE, "", new Lid(true)),
  LID_ON("lid on", Use.HANDLE, "", new Lid(false)),
  INSPECT(
      "inspect",
      Use.LOOK,
      "what can be seen with the eye, on the whole or at one part",
      new Inspect()),
  SUPPLY_OFF_LOAD(
      "supply off load",
      Use.LOOK,
      "volts of the board's own supply with nothing on it",
      new SupplyCheck(false)),
  SUPPLY_ON_DUMMY(
      "supply on dummy load",
      Use.LOOK,
      "volts of the board's own supply on a resistor",
      new SupplyCheck(true)),
  BENCH_SUPPLY(
      "bench supply",
      Use.HANDLE,
      "current the board takes from a supply with a limit",
      new ChooseSupply(Patient.Source.BENCH)),
  SWAP_SUPPLY("swap the supply", Use.HANDLE, "", new ChooseSupply(Patient.Source.BORROWED)),
  OWN_SUPPLY("own supply", Use.HANDLE, "", new ChooseSupply(Patient.Source.OWN)),
  SUPPLY_MARGIN(
      "supply up and down",
      Use.LOOK,
      "what shows with the rails five per cent low, and high",
      new SupplyMargin()),
  CHECK_LEADS(
      "check leads and switches",
      Use.LOOK,
      "whether the leads pass and which switches are closed",
      new CheckLeads()),
  UNPLUG("unplug", Use.HANDLE, "", new Unplug(true)),
  PLUG_IN("plug in", Use.HANDLE, "", new Unplug(false)),
  WRIST_STRAP("wrist strap", Use.HANDLE, "", new WristStrap()),
  POWER_ON("power on", Use.HANDLE, "", new PowerSwitch(PowerSwitch.Way.ON)),
  POWER_OFF("power off", Use.HANDLE, "", new PowerSwitch(PowerSwitch.Way.OFF)),
  POWER_CYCLE("power cycle", Use.HANDLE, "", new PowerSwitch(PowerSwitch.Way.CYCLE)),
  TYPE("type", Use.LOOK, "what keys bring about, one after the other", new TypeKeys()),
  EVERY_KEY(
      EveryKey.NAME,
      Use.LOOK,
      "what comes of every key, pressed one after the other",
      new TryOut(EveryKey.NAME)),
  STICKS(
      Drill.STICKS,
      Use.LOOK,
      "what the board makes of its joysticks, pushed every way, and of their levels",
      new TryOut(Drill.STICKS)),
  TAPE(
      Drill.TAPE,
      Use.LOOK,
      "what comes of a tape that is loaded, and of one that the board writes",
      new TryOut(Drill.TAPE)),
  FILES("files", Use.LOOK, "what comes of asking the drive for its files", new AskForFiles()),
  COLD_STARTS(
      "cold starts",
      Use.LOOK,
      "what shows in five starts from cold, and how often",
      new ColdStarts()),
  INFRA_RED("infra-red", Use.LOOK, "degrees on the case of a part", new InfraRed()),
  BENCH_ROM(
      "bench ROM",
      Use.HANDLE,
      "what a module's program reads back, on screen, lamp and speaker",
      new BenchRomMove(BenchRomMove.Way.PLUG_IN)),
  RETURN_LEADS("return leads", Use.HANDLE, "", new BenchRomMove(BenchRomMove.Way.LEADS_ON)),
  BENCH_ROM_OFF(
      "take off the bench ROM", Use.HANDLE, "", new BenchRomMove(BenchRomMove.Way.TAKE_OFF)),
  LEADS_OFF(
      "take off the return leads", Use.HANDLE, "", new BenchRomMove(BenchRomMove.Way.LEADS_OFF)),
  SCOPE("scope", Use.LOOK, "levels over time on up to eight pins", new Scope()),
  TRACER("tracer", Use.LOOK, "what is heard at a pad on the way of the sound", new FollowSound()),
  MILLIVOLTS(
      "millivolts",
      Use.LOOK,
      "which way a current goes along a track, and how much",
      new AlongTrack(false)),
  FLOW(
      "flow",
      Use.LOOK,
      "between which pins of a net most current flows, found pin by pin",
      new FollowCurrent()),
  MILLIOHMS("milliohms", Use.LOOK, "resistance along a track, without power", new AlongTrack(true)),
  HOLD("hold", Use.HANDLE, "what shows while 1 k holds a line to ground or supply", new HoldLine()),
  LOAD("load", Use.LOOK, "what shows while the input of a probe loads a line", new LoadLine()),
  PRESS(
      "press",
      Use.LOOK,
      "what shows while a part is pressed, or the whole board flexed",
      new Treat(Treat.Way.PRESS)),
  SPRAY("spray", Use.LOOK, "what shows while one part is sprayed cold", new Treat(Treat.Way.SPRAY)),
  WARM_AIR(
      "warm air",
      Use.LOOK,
      "what shows while one part is blown warm",
      new Treat(Treat.Way.WARM_AIR)),
  PIGGYBACK("piggyback", Use.HANDLE, "", new Piggyback(true)),
  PIGGYBACK_OFF("take the chip off", Use.HANDLE, "", new Piggyback(false)),
  LIFT("lift", Use.HANDLE, "", new LiftPin()),
  CUT("cut track", Use.HANDLE, "", new CutTrack()),
  REFIT_CHECK(
      "refit check",
      Use.LOOK,
      "whether all that was out is in its place and sits right",
      new RefitCheck()),
  RESEAT("reseat", Use.MEND, "", new Reseat(Prices.Chances.RESEATING_CURES)),
  CLEAN_CONTACTS("clean contacts", Use.MEND, "", new Reseat(Prices.Chances.CLEANING_CURES)),
  TAKE_OUT("take out", Use.MEND, "", new ChipMove(ChipMove.Way.TAKE_OUT)),
  PUT_BACK("put back", Use.MEND, "", new ChipMove(ChipMove.Way.PUT_BACK)),
  FIT_NEW("fit new", Use.MEND, "", new ChipMove(ChipMove.Way.FIT_NEW)),
  EXCHANGE("exchange", Use.MEND, "", new ChipMove(ChipMove.Way.EXCHANGE)),
  EXCHANGE_TWO("exchange two", Use.MEND, "", new ExchangeTwo()),
  STRAIGHTEN("straighten", Use.REPAIR, "", new Repair(RepairAction.Kind.STRAIGHTEN_LEG)),
  SWAP_BACK("swap back", Use.REPAIR, "", new Repair(RepairAction.Kind.SWAP_BACK)),
  SET_LINK("set link", Use.REPAIR, "", new Repair(RepairAction.Kind.SET_LINK)),
  CLEAN_BOARD("clean board", Use.REPAIR, "", new Repair(RepairAction.Kind.CLEAN)),
  CLEAR_BRIDGE("clear bridge", Use.REPAIR, "", new Repair(RepairAction.Kind.CLEAR_BRIDGE)),
  REFLOW("reflow", Use.REPAIR, "", new Repair(RepairAction.Kind.REFLOW)),
  LINK_TRACK("link track", Use.REPAIR, "", new Repair(RepairAction.Kind.LINK_TRACK)),
  EXCHANGE_SMALL(
      "exchange small part", Use.REPAIR, "", new Repair(RepairAction.Kind.EXCHANGE_SMALL)),
  NEW_SUPPLY("new supply", Use.REPAIR, "", new Repair(RepairAction.Kind.SUPPLY)),
  NEW_SOCKET("new socket", Use.REPAIR, "", new Repair(RepairAction.Kind.NEW_SOCKET)),
  DESOLDER(
      "desolder and socket", Use.REPAIR, "", new Repair(RepairAction.Kind.DESOLDER_AND_SOCKET)),
  CHIP_TEST(
      "chip tester",
      Use.LOOK,
      "whether a pulled chip does all it should, in one pass",
      new ChipTest(false)),
  CHIP_LOOP(
      "chip tester looping",
      Use.LOOK,
      "the same warm, at low volts and again and again",
      new ChipTest(true)),
  READ_OUT(
      "ROM read-out", Use.LOOK, "whether a pulled ROM holds what its listing says", new ReadOut()),
  REFERENCE(
      "reference board",
      Use.LOOK,
      "whether a pulled chip works in a good board",
      new ReferenceBoard()),
  QUICK_CHECK(
      "quick check",
      Use.LOOK,
      "whether screen, sound and lamp are as they should be",
      new CheckBoard(CheckBoard.Depth.QUICK)),
  RETEST(
      "retest all",
      Use.HANDLE,
      "whether all it does is as it should be",
      new CheckBoard(CheckBoard.Depth.ALL)),
  SOAK(
      "soak",
      Use.HANDLE,
      "the same, warm and over several power-ons",
      new CheckBoard(CheckBoard.Depth.SOAK));

  /** What a move does to the board. */
  public enum Use {
    /** Nothing: it only tells. */
    LOOK,
    /** Something that can be taken back. */
    HANDLE,
    /** Something that may have cured it. */
    MEND,
    /** What cures one thing, if that was wrong. */
    REPAIR
  }

  private final String word;

  private final Use use;
  private final String says;
  private final Act act;

  Moves(String word, Use use, String says, Act act) {
    this.word = word;
    this.use = use;
    this.says = says;
    this.act = act;
  }

  /** What it does to the board. */
  public Use use() {
    return use;
  }

  /** What it tells, in plain words; empty if nothing by itself. */
  public String says() {
    return says;
  }

  /** What stands behind its word, in capitals what is to be filled in; empty if nothing does. */
  public String form() {
    return switch (this) {
      case LOOK -> "INSTRUMENT PLACE";
      case ASK -> "QUESTION";
      case TYPE -> "KEY KEY ...";
      case SCOPE -> "PIN PIN ... at N ms";
      case HOLD -> "PIN to ground|supply";
      case LOAD, LIFT, TRACER, REFLOW, CLEAN_BOARD, STRAIGHTEN -> "PIN";
      case MILLIVOLTS, MILLIOHMS, CUT, LINK_TRACK, CLEAR_BRIDGE -> "PIN-PIN";
      case FLOW -> "NET";
      case EXCHANGE_TWO, SWAP_BACK -> "PART-PART";
      case INSPECT, PRESS -> "PART, or nothing for the whole board";
      case INFRA_RED, SPRAY, WARM_AIR, PIGGYBACK, PIGGYBACK_OFF, UNPLUG, PLUG_IN -> "PART";
      case RESEAT, CLEAN_CONTACTS, TAKE_OUT, PUT_BACK, FIT_NEW, EXCHANGE, SET_LINK -> "PART";
      case EXCHANGE_SMALL, NEW_SOCKET, DESOLDER, CHIP_TEST, CHIP_LOOP, READ_OUT, REFERENCE ->
          "PART";
      case NEW_SUPPLY -> "brick|lead";
      case SUPPLY_OFF_LOAD, SUPPLY_ON_DUMMY, BENCH_SUPPLY, SWAP_SUPPLY, OWN_SUPPLY -> "";
      case SUPPLY_MARGIN, CHECK_LEADS, WRIST_STRAP, POWER_ON, POWER_OFF, POWER_CYCLE -> "";
      case LID_OFF,
          LID_ON,
          EVERY_KEY,
          STICKS,
          TAPE,
          FILES,
          COLD_STARTS,
          REFIT_CHECK,
          QUICK_CHECK,
          RETEST,
          SOAK ->
          "";
      case BENCH_ROM, RETURN_LEADS, BENCH_ROM_OFF, LEADS_OFF -> "";
    };
  }

  Act act() {
    return act;
  }

  /** As it begins the text of a move, and as the price list names it. */
  public String word() {
    return word;
  }

  /** The kind of move that a look is for which a board is worked by hand, if it is one. */
  public static Optional<Moves> handsOn(String look) {
    return named(look).filter(m -> m.act instanceof TryOut);
  }

  /** The kind of this word, if there is one. */
  public static Optional<Moves> named(String word) {
    return Arrays.stream(values()).filter(m -> m.word.equals(word)).findFirst();
  }
}
