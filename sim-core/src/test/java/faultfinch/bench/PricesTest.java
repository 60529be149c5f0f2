package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Located;
import faultfinch.signal.BadInput;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Prices by hand: minutes, 20 for a pull, and the expected damage at 60 minutes. */
class PricesTest {
  private static final Prices PRICES = Prices.shipped();

  private static Price price(String move) {
    return PRICES.of(Move.parse(move));
  }

  @Test
  void price_screen_isOneMinuteAndNoMore() {
    assertEquals(new Price(1, 0, 0, 1), price("look: screen"));
  }

  @Test
  void price_probe_carriesTheRiskOfASlip() {
    // 0.1 % of 60 minutes is 0.06.
    Price price = price("look: probe U9.D0 at the pin");
    assertEquals(0.06, price.damage(), 1e-12);
    assertEquals(1.06, price.total(), 1e-12);
  }

  @Test
  void price_exchange_isTakingOutAndFitting() {
    // 4 + 1 minutes, one pull at 20, 0.5 % of 60 minutes is 0.3.
    assertEquals(25.3, price("exchange: U9").total(), 1e-12);
    assertEquals(
        price("take out: U9").total() + price("fit new: U9").total(),
        price("exchange: U9").total(),
        1e-12);
  }

  @Test
  void price_desoldering_carriesTheTornPad() {
    // 25 minutes, a pull, 3 % of 60 minutes is 1.8.
    assertEquals(46.8, price("desolder and socket: U4").total(), 1e-12);
  }

  @Test
  void price_inspection_isDearerForTheWholeBoard() {
    assertEquals(3, price("inspect").minutes());
    assertEquals(1, price("inspect: C1").minutes());
  }

  @Test
  void list_withoutAMove_isRefusedWithItsPlace() {
    byte[] list =
        "{\"minutesAPull\": 20, \"damageMinutes\": 60, \"moves\": {}, \"chances\": {}}"
            .getBytes(StandardCharsets.UTF_8);
    BadInput refused =
        assertThrows(BadInput.class, () -> Prices.of(Located.read("mine.json", list)));
    assertTrue(refused.getMessage().startsWith("mine.json:1:"), refused.getMessage());
    assertTrue(refused.getMessage().contains("look: screen"), refused.getMessage());
  }
}
