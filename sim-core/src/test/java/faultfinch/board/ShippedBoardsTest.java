package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import faultfinch.part.PartCatalog;
import faultfinch.signal.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the shipped descriptions say, held against the descriptions by eye. */
class ShippedBoardsTest {
  private static final Path BOARDS = Path.of("src/main/resources/faultfinch/boards");

  @Test
  void shippedNames_allOfThem_areTheFoldersOfTheBoards() throws IOException {
    try (Stream<Path> files = Files.list(BOARDS)) {
      Set<String> folders =
          files
              .filter(Files::isDirectory)
              .map(p -> p.getFileName().toString())
              .collect(Collectors.toSet());
      assertEquals(folders, Set.copyOf(BoardReader.shippedNames()));
    }
  }

  @Test
  void shipped_anyName_isTheBoardOfThatName() {
    for (String name : BoardReader.shippedNames()) {
      assertEquals(name, BoardReader.shipped(name).name());
    }
  }

  @Test
  void shipped_readFromDisk_isTheSameBoardPartByPartAndNetByNet() {
    for (String name : BoardReader.shippedNames()) {
      Board inside = BoardReader.shipped(name);
      Board onDisk = BoardReader.read(BOARDS.resolve(name).resolve("board.json"));
      assertEquals(inside.parts(), onDisk.parts());
      assertEquals(inside.nets(), onDisk.nets());
      assertEquals(inside.supply(), onDisk.supply());
    }
  }

  @Test
  void shipped_anyBoard_hasEveryPinOnOneNetAtMostAndTreesForNets() {
    for (String name : BoardReader.shippedNames()) {
      Board board = BoardReader.shipped(name);
      int pads = 0;
      for (Net net : board.nets()) {
        pads += net.pads().size();
        assertEquals(net.pads().size() - 1, net.segments().size(), net.name());
      }
      assertEquals(pads, board.netOfPad().size(), name);
    }
  }

  @Test
  void sorrel_read_saysWhatItsFileSays() {
    Board sorrel = BoardReader.shipped("sorrel");
    assertEquals("Sorrel", sorrel.title());
    assertEquals("Marrow Lane Works", sorrel.maker());
    assertEquals(2_457_600, sorrel.hertz());
    assertEquals("X1", sorrel.crystal());
    assertEquals(List.of(130, 140, 137, 130, 140, 137), sorrel.phaseNanoseconds());
    assertEquals(814, sorrel.cycleNanoseconds()); // two ticks of 406.9 ns
    assertEquals(190, sorrel.width());
    assertEquals(125, sorrel.height());
    assertEquals("SORREL", sorrel.rightDisplay());
    assertEquals(List.of("U8", "U9", "U3"), sorrel.worthTakingOut());
    assertEquals(
        new PlacedPart(
            "R1",
            PartCatalog.RESISTOR,
            "pull-up of the divider's set and clear pins",
            39.5,
            37,
            0,
            false,
            "4k7",
            "passive"),
        sorrel.part("R1").orElseThrow());
  }

  @Test
  void sorrel_supply_isInThousandths() {
    // 11.5 V and 3.1 ohms; the regulator's GND pin is on GND.
    assertEquals(
        new Supply(11_500, 3_100, "9V", "J1", "5V", "VR1", "GND"),
        BoardReader.shipped("sorrel").supply());
  }

  @Test
  void sorrel_branchOfD0_leavesFromThePadBeforeTheBracket() {
    // "U1.D0 U2.D0 (U9.D0) U3.D0 U8.D0 U10.1Y1"
    assertEquals(
        List.of("U1.D0-U2.D0", "U2.D0-U9.D0", "U2.D0-U3.D0", "U3.D0-U8.D0", "U8.D0-U10.1Y1"),
        BoardReader.shipped("sorrel").net("D0").orElseThrow().segments().stream()
            .map(Net.Segment::text)
            .toList());
  }

  @Test
  void sorrel_firmware_isOneImageWithItsLabels() {
    Board sorrel = BoardReader.shipped("sorrel");
    Firmware rom = sorrel.firmware().get(0);
    assertEquals("U2", rom.ref());
    assertEquals(8192, rom.image().length);
    assertEquals(0x0010, rom.labels().get("spare"));
    assertEquals(
        new Milestone("M_RESET", "reset", "the processor fetched its first instruction", 0xE000),
        sorrel.milestones().get(0));
    assertEquals(19, sorrel.milestones().size());
    // The reset vector of a ROM that ends at FFFF: bytes 1FFC and 1FFD of 2000.
    assertEquals(0xE000, (rom.image()[0x1FFC] & 0xFF) | (rom.image()[0x1FFD] & 0xFF) << 8);
  }

  @Test
  void sorrel_exercise_pressesFiveTimes() {
    assertEquals(
        List.of(
            new KeyPress("K1", 400, 120),
            new KeyPress("K2", 600, 120),
            new KeyPress("K2", 800, 120),
            new KeyPress("K3", 1000, 120),
            new KeyPress("K4", 1250, 120)),
        BoardReader.shipped("sorrel").exercise());
  }

  @Test
  void shipped_unknownName_namesTheBoardsThereAre() {
    BadInput bad = assertThrows(BadInput.class, () -> BoardReader.shipped("sorel"));
    assertEquals(
        "sorel/board.json:1:1: found no board 'sorel', right would be sorrel or tamarisk",
        bad.getMessage());
  }
}
