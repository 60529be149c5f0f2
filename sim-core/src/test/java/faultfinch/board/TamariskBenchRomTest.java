package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The bench ROM on a plain map: what its sentences, ribbons and pulses say, and how long it takes.
 */
class TamariskBenchRomTest {
  private static final byte[] BENCH = TamariskImages.bytes("bench.bin");
  private static final byte[] ROM1 = TamariskImages.bytes("rom1.bin");
  private static final Map<String, Integer> LABELS = TamariskImages.labels("bench.lbl");
  private static final String WHOLE = "########";
  private static final double ROUND_SECONDS = 6;

  /** The station that begins at an address. */
  private static final String[] STATIONS = new String[0x10000];

  static {
    LABELS.forEach((label, at) -> STATIONS[at] = label.startsWith("M_STATION_") ? label : null);
  }

  private static final Map<String, Long> HEALTHY = lengths(healthy());

  @Test
  void round_healthyWithReturnLeads_nothingDiffers() {
    TamariskMap map = afterRound(healthy());
    for (int station = 1; station <= 10; station++) {
      assertTrue(second(map, station).contains(": 000 of "), second(map, station));
      assertEquals(WHOLE, ribbon(map, station));
    }
    // Page 2 of the memory: 02 ^ 5A = 58.
    assertEquals("Station 04 wrote 58, read 58 at page", first(map, 4));
    assertEquals("02: 000 of 252 differ.", second(map, 4));
    assertEquals(List.of(), map.lampCameOn);
    // Attribute cells have four lines; the other four are masked.
    assertTrue(map.undriven.stream().allMatch(at -> at >> 10 == 0xA800 >> 10));
  }

  @Test
  void round_otherContentsAtPowerOn_doesTheSameCycleByCycle() {
    TamariskMap one = healthy();
    TamariskMap other = new TamariskMap(BENCH, ROM1, 77);
    other.returnLeads = true;
    for (TamariskMap map : List.of(one, other)) {
      assertTrue(map.reaches(LABELS.get("M_BENCH"), 1));
      map.digest();
      map.run(3000);
    }
    assertEquals(one.digest(), other.digest());
  }

  /** Page 2C is written 2C ^ 5A = 76 and its inverse 89; with bit 1 low they read 74 and 89. */
  @Test
  void stationFour_aBitOfOnePageLow_saysWhatCameBack() {
    TamariskMap map = healthy();
    map.memory = (cell, value) -> cell >> 8 == 0x2C ? value & 0xFD : value;
    afterRound(map);
    assertEquals("Station 04 wrote 76, read 74 at page", first(map, 4));
    assertEquals("2C: 001 of 252 differ.", second(map, 4));
    assertEquals("###### #", ribbon(map, 4));
    assertEquals(List.of(1, 4), pulses(map));
  }

  /** Byte 5 of page 0 in its second try holds 05 ^ C6 ^ FF = 3C; with bit 4 low it reads 2C. */
  @Test
  void stationTwo_aByteOfPageZero_isToldWithoutMemory() {
    TamariskMap map = healthy();
    map.memory = (cell, value) -> cell == 5 ? value & 0xEF : value;
    afterRound(map);
    assertEquals("Station 02 wrote 3C, read 2C at page", first(map, 2));
    assertEquals("00: 001 of 255 differ.", second(map, 2));
    assertEquals("### ####", ribbon(map, 2));
    // Page 1 holds byte 0 as 00 ^ F3 ^ FF = 0C; what needs pages 0 and 1 does not run.
    assertEquals("Station 03 wrote 0C, read 0C at page", first(map, 3));
    assertTrue(first(map, 4).startsWith("Station 04 wrote   , read"), first(map, 4));
    assertEquals(List.of(1, 2), pulses(map));
  }

  @Test
  void stationTwo_pagesZeroAndOneGone_isToldAllTheSame() {
    TamariskMap map = healthy();
    map.memory = (cell, value) -> cell < 0x200 ? 0xFF : value;
    afterRound(map);
    // 00 ^ C6 ^ FF = 39; of bytes 01 to FF only C6 wants FF.
    assertEquals("Station 02 wrote 39, read FF at page", first(map, 2));
    assertEquals("00: 254 of 255 differ.", second(map, 2));
    assertEquals(" ".repeat(8), ribbon(map, 2));
    assertEquals(List.of(1, 2), pulses(map));
  }

  /**
   * The window shows bank 0 whatever is asked, so that page 80 holds what went to page E0 last: E0
   * ^ 5A = BA, where 80 ^ 5A = DA was written.
   */
  @Test
  void stationFive_latchOut_tellsThreeBanks() {
    TamariskMap map = healthy().without(TamariskMap.Chip.CONTROLLER);
    afterRound(map);
    assertEquals("Station 05 wrote DA, read BA at page", first(map, 5));
    assertEquals("80: 192 of 256 differ.", second(map, 5));
    assertEquals("#  #####", ribbon(map, 5));
  }

  /** Lines that nobody drives are pulled up: 00 out on 0-3 reads F0, 55 reads F5, AA reads FA. */
  @Test
  void stationNine_noReturnLeads_tellsTheRestLevels() {
    TamariskMap map = healthy();
    map.returnLeads = false;
    afterRound(map);
    assertEquals("Station 09 wrote 00, read F0 at page", first(map, 9));
    assertEquals("A1: 006 of 011 differ.", second(map, 9));
    assertEquals(List.of(3, 1), pulses(map));
  }

  @Test
  void stationOne_aByteOfRomOneOtherwise_isToldWithTheRest() {
    byte[] rom1 = ROM1.clone();
    rom1[77] ^= 1;
    TamariskMap map = new TamariskMap(BENCH, rom1, 1);
    map.returnLeads = true;
    afterRound(map);
    assertTrue(second(map, 1).startsWith("C0: 001 of 001"), second(map, 1));
    assertTrue(second(map, 10).startsWith("A2: 000 of 008"), second(map, 10));
    assertEquals(List.of(1, 1), pulses(map));
  }

  /** Half periods of 8 cycles: 256 is 336 Hz, 512 is 168 Hz; the pulses sound at 128. */
  @Test
  void tones_oneStationDiffers_itsIsTheLowerOne() {
    TamariskMap map = healthy();
    map.returnLeads = false;
    afterRound(map);
    assertEquals(
        List.of(256, 256, 256, 256, 256, 256, 256, 256, 512, 256),
        map.sounded.stream().filter(half -> half != 128).toList());
    assertEquals(3 + 1, map.sounded.stream().filter(half -> half == 128).count());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("troubles")
  void anyStation_whetherItDiffersOrNot_takesTheSameCycles(
      String name, Consumer<TamariskMap> trouble) {
    TamariskMap map = healthy();
    trouble.accept(map);
    lengths(map).forEach((label, cycles) -> assertEquals(HEALTHY.get(label), cycles, label));
  }

  static Stream<Arguments> troubles() {
    return Stream.of(
        trouble("bit above page 1", m -> m.memory = (c, v) -> c < 0x200 ? v : v | 0x10),
        trouble("one page", m -> m.memory = (c, v) -> c >> 8 == 0x9C ? v ^ 0xFF : v),
        trouble("page 0", m -> m.memory = (c, v) -> c == 200 ? v ^ 1 : v),
        trouble("page 1", m -> m.memory = (c, v) -> c >> 8 == 1 ? 0 : v),
        trouble("no memory", m -> m.memory = (c, v) -> 0xFF),
        trouble("no leads", m -> m.returnLeads = false),
        trouble("controller out", m -> m.without(TamariskMap.Chip.CONTROLLER)),
        trouble("link out", m -> m.without(TamariskMap.Chip.LINK)),
        trouble("tone out", m -> m.without(TamariskMap.Chip.TONE)),
        trouble("attributes out", m -> m.without(TamariskMap.Chip.ATTRIBUTES)),
        trouble("ROM 1 out", m -> m.without(TamariskMap.Chip.ROM1)));
  }

  private static Arguments trouble(String name, Consumer<TamariskMap> trouble) {
    return Arguments.of(name, trouble);
  }

  /** Cycles from the start of a round to each station reached in it, and to its end. */
  private static Map<String, Long> lengths(TamariskMap map) {
    assertTrue(map.reaches(LABELS.get("M_BENCH_ROUND"), ROUND_SECONDS), map::trail);
    Map<String, Long> lengths = new LinkedHashMap<>();
    long start = map.mpu.cycle;
    int round = LABELS.get("M_BENCH_ROUND");
    do {
      map.mpu.step();
      String station = STATIONS[map.mpu.pc];
      if (station != null) {
        lengths.put(station, map.mpu.cycle - start);
      }
    } while (map.mpu.pc != round);
    lengths.put("round", map.mpu.cycle - start);
    return lengths;
  }

  private static TamariskMap healthy() {
    TamariskMap map = new TamariskMap(BENCH, ROM1, 1);
    map.returnLeads = true;
    return map;
  }

  private static TamariskMap afterRound(TamariskMap map) {
    assertTrue(map.reaches(LABELS.get("M_BENCH_PULSES"), ROUND_SECONDS), map::trail);
    map.mpu.step();
    map.lampCameOn.clear();
    assertTrue(map.reaches(LABELS.get("M_BENCH_ROUND"), 2 * ROUND_SECONDS), map::trail);
    return map;
  }

  /** How many pulses each group had: within a group they are 0.1 s apart. */
  private static List<Integer> pulses(TamariskMap map) {
    List<Integer> groups = new ArrayList<>();
    long last = Long.MIN_VALUE / 2;
    for (long at : map.lampCameOn) {
      if (at - last > 150_000) {
        groups.add(0);
      }
      groups.set(groups.size() - 1, groups.get(groups.size() - 1) + 1);
      last = at;
    }
    return groups;
  }

  private static String first(TamariskMap map, int station) {
    return map.row(2 * station - 2);
  }

  private static String second(TamariskMap map, int station) {
    return map.row(2 * station - 1).substring(0, 22);
  }

  /** # for a line, a blank for a gap. */
  private static String ribbon(TamariskMap map, int station) {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < 8; i++) {
      int code = map.ram[0x7000 + 72 * (station - 1) + 64 + i];
      lines.append(code == 2 ? '#' : code == 3 ? ' ' : '?');
    }
    return lines.toString();
  }
}
