package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Pad;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Feed;
import faultfinch.machine.Machine;
import faultfinch.machine.Power;
import faultfinch.machine.Setup;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A short on a rail is followed to the very part, with the board dead and its fuse whole or not.
 */
class RailPathsTest {
  private static final Board BOARD = BoardReader.shipped("tamarisk");

  private static Setup with(String fault) {
    return Setup.healthy(BOARD, 1).with(List.of(FaultKinds.parse(fault, BOARD)));
  }

  private static SortedMap<String, String> found(String fault) {
    Setup setup = with(fault);
    return RailPaths.of(setup, Power.of(setup), RailPaths.nets(BOARD));
  }

  @Test
  void nets_areAllBetweenJacksAndChips() {
    assertEquals(
        Set.of("5VA", "5VP", "5VS", "12V", "9V", "RAW", "RAWS", "LK5"),
        Set.copyOf(RailPaths.nets(BOARD)));
  }

  @ParameterizedTest
  @CsvSource({
    "C12: short, 5VA, C12.1",
    "C11: short, 5VA, C11.1",
    "C27: short, 5VP, C27.+",
    "C1: short, RAW, C1.+",
    "C29: short, 12V, C29.+",
  })
  void shortedCapacitor_isWhereTheCurrentGoes(String fault, String net, String pin) {
    assertEquals("too much goes to " + pin, found(fault).get(net));
  }

  @Test
  void railBesideTheShortedOne_takesWhatItShould() {
    // VR1 is too hot to let more into the short than it gives to sound parts.
    SortedMap<String, String> found = found("C12: short");
    assertEquals(RailPaths.AS_IT_SHOULD, found.get("RAW"));
    assertEquals(RailPaths.AS_IT_SHOULD, found.get("5VP"));
  }

  /** Another way for the current, and nothing that takes more. */
  @Test
  void chipWithoutSupply_takesNoMore() {
    assertEquals(Set.of(RailPaths.AS_IT_SHOULD), Set.copyOf(found("U9.VCC: open pin").values()));
  }

  @Test
  void taken_ofAShort_isWhatTheSupplyGives() {
    // 2 A at most, the least part of which goes to what is sound.
    Pad at = new Pad("VR1", "OUT");
    Map<Pad, Double> taken = Power.of(with("C12: short")).taken(at, new Feed.Bench(5000, 2000));
    double all = taken.values().stream().mapToDouble(Double::doubleValue).sum();
    assertEquals(2000, all, 1);
    assertTrue(taken.get(new Pad("C12", "1")) > 1500, taken::toString);
  }

  @Test
  void look_withoutPower_isTheSame() {
    List<Fault> wrong = List.of(FaultKinds.parse("C12: short", BOARD));
    Bench bench = new Bench(new Job(BOARD, wrong, 1, Intake.none(), Prices.shipped()));
    assertEquals("too much goes to C12.1", bench.perform(Move.parse("flow: 5VA")).reading().text());
  }

  /** 0.6 W at 60 K a watt, on a board that is 25 degrees warm. */
  @Test
  void shortedCapacitor_burnsAFinger_andNoneBesideIt() {
    List<Fault> wrong = List.of(FaultKinds.parse("C12: short", BOARD));
    Bench bench = new Bench(new Job(BOARD, wrong, 1, Intake.none(), Prices.shipped()));
    bench.perform(Move.parse("power on"));
    assertEquals(
        "hot, and it burns", bench.perform(Move.parse("look: finger C12")).reading().text());
    assertEquals("normal", bench.perform(Move.parse("look: finger C11")).reading().text());
  }

  @Test
  void row_ofAShort_saysSo() {
    Machine machine = new Machine(with("C12: short"), Machine.Kind.FAST);
    machine.runTo(CurrentPaths.begin(BOARD));
    assertEquals("too much goes to C12.1", CurrentPaths.of(machine).get("5VA"));
  }
}
