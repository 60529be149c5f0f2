package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.signal.BadInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file of a bench ROM, read with its board. */
class BenchRomFileTest {
  private static final Path TAMARISK = BadBoard.SORREL.resolveSibling("tamarisk");
  @TempDir Path folder;

  private BenchRom read(String from, String to) throws IOException {
    try (Stream<Path> files = Files.walk(TAMARISK)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(TAMARISK.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.write(copy, Files.readAllBytes(file));
      }
    }
    Path bench = folder.resolve("bench.json");
    String text = Files.readString(bench);
    assertTrue(text.contains(from), from);
    Files.writeString(bench, text.replace(from, to));
    return BoardReader.read(folder.resolve("board.json")).benchRom().orElseThrow();
  }

  private String refused(String from, String to) {
    return assertThrows(
            BadInput.class,
            () -> {
              try {
                read(from, to);
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            })
        .getMessage()
        .replaceFirst("^.*bench.json:\\d+:\\d+: ", "");
  }

  @Test
  void tamarisk_read_hasItsPartsLeadsAndReport() {
    BenchRom rom = BoardReader.shipped("tamarisk").benchRom().orElseThrow();
    assertEquals(
        List.of("M1", "M2", "M3"), rom.plug().parts().stream().map(PlacedPart::ref).toList());
    assertEquals(
        List.of("SP1.SP0-SP1.SP4", "SP1.SP1-SP1.SP5", "SP1.SP2-SP1.SP6", "SP1.SP3-SP1.SP7"),
        rom.returnLeads().stream().map(Contact::text).toList());
    // 16 address lines, 8 data lines, read, clock, take, supply and ground.
    assertEquals(29, rom.plug().contacts().size());
    assertEquals(8192, rom.plug().firmware().get(0).image().length);
    assertTrue(BoardReader.shipped("sorrel").benchRom().isEmpty());
  }

  @Test
  void plug_unknownNet_isNamedWithANearOne() {
    assertTrue(
        refused("\"EX1.A0\": \"MA0\"", "\"EX1.A0\": \"MAO\"")
            .startsWith("found unknown net 'MAO', right would be "));
  }

  @Test
  void plug_unknownPinOfTheBoard_isNamed() {
    assertTrue(
        refused("\"EX1.A0\": \"MA0\"", "\"EX1.B0\": \"MA0\"")
            .startsWith("found unknown pin 'B0' of EX1, a EXPANSION, right would be "));
  }

  @Test
  void parts_referenceOfTheBoard_isRefused() {
    assertEquals(
        "found U1, which the board has too, right would be a reference of its own",
        refused("{\"ref\": \"M3\"", "{\"ref\": \"U1\""));
  }

  @Test
  void firmware_missing_isRefusedWithItsName() {
    assertTrue(refused("firmware/bench.bin", "firmware/none.bin").contains("'firmware/none.bin'"));
  }
}
