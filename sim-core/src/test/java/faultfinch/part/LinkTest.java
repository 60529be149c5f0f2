package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.signal.Phase;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Link controller and drive at the two ends of three lines, by the protocol of their pages. A cycle
 * is 1 us; a bit takes the drive twice 20 us, so a byte takes some 350.
 */
class LinkTest {
  private static final int LONGEST_BYTE = 400;
  private final BenchPins host = new BenchPins(new LinkController());
  private final BenchPins drive = new BenchPins(new Drive());
  private final Registers registers = new Registers(host);
  private boolean cut;

  @BeforeEach
  void switchOn() {
    drive.powerOn(index -> 0);
    host.high("ACK/", "DAT/");
    drive.high("STB/", "ATN/", "DAT/");
    lines();
  }

  /** Levels of the lines: low if either end pulls. */
  private void lines() {
    drive.set("STB/", host.out("STB") == 'L');
    drive.set("ATN/", host.out("ATN") == 'L');
    boolean data = host.out("DO") == 'L' && drive.out("DAT/") != 'L';
    drive.set("DAT/", data);
    host.set("DAT/", data);
    host.set("ACK/", cut || drive.out("ACK/") != 'L');
  }

  private void cycle() {
    host.passMicroseconds(1);
    drive.passMicroseconds(1);
    if (drive.part().nextChange(drive) <= drive.now()) {
      drive.elapse();
    }
    lines();
    drive.commit(Phase.C_ROW);
    lines();
    registers.clockFalls();
    lines();
    drive.commit(Phase.C_END);
    lines();
  }

  /** Cycles until the controller is idle, at most as many as given. */
  private int busy(int most) {
    int cycles = 0;
    while ((registers.read(2) & 0x40) != 0 && cycles < most) {
      cycle();
      cycles++;
    }
    return cycles;
  }

  private void send(int value) {
    registers.write(0, value);
    assertTrue(busy(LONGEST_BYTE) < LONGEST_BYTE, "the drive takes the byte");
  }

  private void command(int value) {
    registers.write(1, 2);
    send(value);
    registers.write(1, 0);
    cycle();
  }

  private int receive() {
    registers.write(1, 1);
    assertTrue(busy(LONGEST_BYTE) < LONGEST_BYTE, "the drive gives a byte");
    return registers.read(0);
  }

  private void send(String text) {
    for (byte b : text.getBytes(StandardCharsets.US_ASCII)) {
      send(b);
    }
    send(0x0D);
  }

  private List<String> list() {
    command(0x41);
    List<String> names = new ArrayList<>();
    StringBuilder name = new StringBuilder();
    for (int c = receive(); c != 0; c = receive()) {
      if (c == 0x0D) {
        names.add(name.toString());
        name.setLength(0);
      } else {
        name.append((char) c);
      }
    }
    return names;
  }

  private int keep(String name, int[] bytes) {
    command(0x43);
    send(name);
    send(bytes.length & 0xFF);
    send(bytes.length >>> 8);
    for (int b : bytes) {
      send(b);
    }
    return receive();
  }

  private int[] fetch(String name) {
    command(0x42);
    send(name);
    int[] bytes = new int[receive() | receive() << 8];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = receive();
    }
    return bytes;
  }

  @Test
  void areYouThere_driveOnTheLink_isAnsweredByFiveA() {
    command(0x40);
    assertEquals(0x5A, receive());
  }

  @Test
  void send_firstBits_lowBitFirst() {
    // A5 = 1010 0101: the first bit is 1, the second 0, the third 1.
    registers.write(1, 2);
    registers.write(0, 0xA5);
    StringBuilder bits = new StringBuilder();
    char strobe = host.out("STB");
    for (int i = 0; i < LONGEST_BYTE; i++) {
      cycle();
      if (strobe == 'L' && host.out("STB") == 'H') {
        bits.append(host.out("DO") == 'H' ? 1 : 0);
      }
      strobe = host.out("STB");
    }
    assertEquals("10100101", bits.toString());
  }

  @Test
  void answer_eachEdge_comesWithinFortyMicroseconds() {
    registers.write(1, 2);
    registers.write(0, 0x40);
    List<Integer> times = new ArrayList<>();
    char strobe = host.out("STB");
    for (int i = 0; i < LONGEST_BYTE; i++) {
      cycle();
      if (host.out("STB") != strobe) {
        strobe = host.out("STB");
        times.add(i);
      }
    }
    // Eight bits have sixteen edges; the controller turns within a few cycles of the answer.
    assertEquals(16, times.size());
    for (int i = 1; i < times.size(); i++) {
      assertTrue(times.get(i) - times.get(i - 1) < 40, "edge " + i);
    }
  }

  @Test
  void list_discAsDelivered_givesItsThreeNames() {
    assertEquals(List.of("NOTES", "STAIRS", "LADDER"), list());
  }

  @Test
  void fetch_aFileThatIsThere_givesItsBytes() {
    int[] bytes = fetch("LADDER");
    assertEquals(11, bytes.length);
    for (int i = 0; i < 10; i++) {
      assertEquals('0' + i, bytes[i]);
    }
    assertEquals(0x0D, bytes[10]);
  }

  @Test
  void fetch_aFileThatIsNotThere_givesLengthZero() {
    assertEquals(0, fetch("NOTHING").length);
    assertEquals(0x5A, hereAgain());
  }

  private int hereAgain() {
    command(0x40);
    return receive();
  }

  @Test
  void keep_anyBytes_canBeListedAndFetched() {
    int[] bytes = new int[300];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = i * 7 & 0xFF;
    }
    assertEquals(0, keep("MINE", bytes));
    assertEquals(List.of("NOTES", "STAIRS", "LADDER", "MINE"), list());
    assertArrayEquals(bytes, fetch("MINE"));
    assertEquals(0, keep("MINE", new int[] {1}));
    assertEquals(1, fetch("MINE").length);
    assertEquals(4, list().size());
  }

  @Test
  void keep_emptyFile_isKept() {
    assertEquals(0, keep("VOID", new int[0]));
    assertEquals(0, fetch("VOID").length);
    assertEquals(4, list().size());
  }

  @Test
  void keep_tooLongOrNoRoom_saysSoAndKeepsNothing() {
    assertEquals(2, keep("LONG", new int[Drive.LONGEST + 1]));
    assertEquals(3, list().size());
    for (int i = 3; i < Drive.FILES; i++) {
      assertEquals(0, keep("F" + i, new int[] {i}));
    }
    assertEquals(1, keep("MORE", new int[] {1}));
    assertEquals(Drive.FILES, list().size());
  }

  @Test
  void receive_nothingToSay_waitsForEverUntilStopped() {
    registers.write(1, 1);
    assertEquals(LONGEST_BYTE, busy(LONGEST_BYTE));
    assertEquals('H', host.out("STB"));
    registers.write(1, 0x80);
    assertEquals('L', host.out("STB"));
    assertEquals(0, registers.read(2) & 0x40);
  }

  @Test
  void send_answerLineCut_staysBusyAndTheDriveLetsGoWhenStopped() {
    cut = true;
    registers.write(1, 2);
    registers.write(0, 0x40);
    assertEquals(LONGEST_BYTE, busy(LONGEST_BYTE));
    registers.write(1, 0x80);
    for (int i = 0; i < 50; i++) {
      cycle();
    }
    cut = false;
    cycle();
    assertEquals(0, registers.read(2) & 4);
    command(0x40);
    assertEquals(0x5A, receive());
  }

  @Test
  void waiting_forTheAnswer_storesNothing() {
    registers.write(1, 1);
    cycle();
    cycle();
    BenchPins before = host.copy();
    for (int i = 0; i < 100; i++) {
      registers.clockFalls();
      assertTrue(host.sameState(before));
    }
  }

  @Test
  void interrupt_enabled_fallsWhenDoneUntilStatusIsRead() {
    registers.write(1, 6);
    registers.write(0, 0x40);
    for (int i = 0; i < LONGEST_BYTE; i++) {
      cycle();
    }
    assertEquals('L', host.out("IRQ/"));
    assertEquals(0x81, registers.read(2));
    assertEquals('Z', host.out("IRQ/"));
    assertEquals(0, registers.read(2));
  }

  @Test
  void status_linesPulledLow_areSeen() {
    host.low("DAT/");
    assertEquals(8, registers.read(2));
    host.low("ACK/");
    assertEquals(12, registers.read(2));
  }

  @ParameterizedTest
  @CsvSource({
    // 64 equal steps of 5000 mV: 78.1 mV each.
    "0, 0",
    "78, 0",
    "79, 1",
    "2500, 32",
    "4921, 62",
    "4922, 63",
    "5000, 63",
    "5300, 63"
  })
  void levelInput_any_isTheShareOfTheReference(int millivolts, int share) {
    host.millivolts("REF", 5000).millivolts("LV1", millivolts).millivolts("LV2", 0);
    assertEquals(share, registers.read(5));
    assertEquals(0, registers.read(6));
  }

  @Test
  void levelInput_noReference_readsFullAboveGround() {
    host.millivolts("REF", 0).millivolts("LV2", 40).millivolts("LV1", 0);
    assertEquals(63, registers.read(6));
    assertEquals(0, registers.read(5));
  }

  @Test
  void levelInput_whileAByteIsOnItsWay_isReadAllTheSame() {
    host.millivolts("REF", 5000).millivolts("LV1", 2500);
    registers.write(1, 1);
    assertEquals(32, registers.read(5));
    assertEquals(0x40, registers.read(2) & 0x40);
  }

  @Test
  void sidePort_outputs_driveWhatWasWrittenAndReadThePins() {
    registers.write(4, 0x0F);
    registers.write(3, 0x05);
    assertEquals('H', host.out("SP0"));
    assertEquals('L', host.out("SP1"));
    assertEquals('Z', host.out("SP4"));
    host.bus("SP", 0x55);
    assertEquals(0x55, registers.read(3));
  }
}
