package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ElementTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "0k0, 0",
    "330, 330",
    "1, 1",
    "4k7, 4700",
    "4k75, 4750",
    "100k, 100000",
    "0k5, 500",
    "1M, 1000000",
    "2M2, 2200000",
    "47R, 47",
    "2000M, 2000000000"
  })
  void ohms_valueAsPrinted_isRead(String value, int ohms) {
    assertEquals(ohms, Element.ohms(value));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "k47",
        "4,7k",
        "4.7k",
        "-10",
        "10 k",
        "10K",
        "4k7k",
        "ten",
        "3000M",
        "9999999999"
      })
  void ohms_notAValue_isRefusedWithWhatWouldBeRight(String value) {
    String says =
        assertThrows(IllegalArgumentException.class, () -> Element.ohms(value)).getMessage();
    assertEquals("found value '" + value + "', right would be for example 330, 4k7 or 1M", says);
  }

  @ParameterizedTest
  @CsvSource({"100n, 1e-7", "4n7, 4.7e-9", "22u, 2.2e-5", "47p, 4.7e-11", "1u5, 1.5e-6"})
  void farads_valueAsPrinted_isRead(String value, double farads) {
    assertEquals(farads, Element.farads(value), farads * 1e-9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "n47", "4.7n", "100", "10k", "100 n"})
  void farads_notAValue_isRefusedWithWhatWouldBeRight(String value) {
    String says =
        assertThrows(IllegalArgumentException.class, () -> Element.farads(value)).getMessage();
    assertEquals(
        "found value '" + value + "', right would be for example 47p, 4n7, 100n or 22u", says);
  }

  @Test
  void joins_resistor_isItsValue() {
    assertEquals(
        List.of(new Join("1", "2", 4700, false)), joins(PartCatalog.RESISTOR, "4k7", false));
  }

  @Test
  void joins_pack_goFromTheCommonPinToEachOther() {
    List<Join> joins = joins(PartCatalog.RESISTOR_PACK, "10k", false);
    assertEquals(8, joins.size());
    for (int i = 1; i <= 8; i++) {
      assertTrue(joins.contains(new Join("COM", String.valueOf(i), 10_000, false)));
    }
  }

  @Test
  void joins_key_onlyWhileClosed() {
    assertEquals(List.of(), joins(PartCatalog.KEY, "", false));
    assertEquals(1, joins(PartCatalog.KEY, "", true).size());
  }

  @Test
  void joins_potentiometer_divideAtTheWiper() {
    // In the middle 50k each; pushed over a hundredth of the track stays at end 1.
    assertEquals(
        List.of(new Join("1", "2", 50_000, false), new Join("2", "3", 50_000, false)),
        joins(PartCatalog.POTENTIOMETER, "100k", false));
    assertEquals(
        List.of(new Join("1", "2", 1_000, false), new Join("2", "3", 99_000, false)),
        joins(PartCatalog.POTENTIOMETER, "100k", true));
  }

  @Test
  void joins_diode_goOneWay() {
    Join join = joins(PartCatalog.DIODE, "", false).get(0);
    assertEquals("A", join.from());
    assertEquals("K", join.to());
    assertTrue(join.diode());
  }

  private static List<Join> joins(PartCatalog row, String value, boolean closed) {
    return ((Element) row.part()).joins(value, closed);
  }
}
