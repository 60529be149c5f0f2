package faultfinch.diagnosis;

import faultfinch.bench.BenchRom;
import faultfinch.bench.Instruments;
import faultfinch.bench.Look;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Price;
import faultfinch.bench.Prices;
import faultfinch.fault.RepairAction;
import java.util.Optional;

/**
 * The price list of the bench; each repair is followed by the quick check.
 *
 * @param prices of the bench
 */
public record BenchPrices(Prices prices) implements PriceList {

  @Override
  public Price look(String look) {
    int space = look.indexOf(' ');
    Optional<Instruments> kind = Instruments.named(space < 0 ? look : look.substring(0, space));
    return kind.isPresent() ? prices.of(Look.parse(look)) : ofNoInstrument(look);
  }

  /** The looks that are moves. */
  private Price ofNoInstrument(String look) {
    if (look.equals(StartRows.LOOK)) {
      return prices.of(new Move(Moves.COLD_STARTS, ""));
    }
    Optional<Moves> tried = Moves.handsOn(look);
    if (tried.isPresent()) {
      return prices.of(new Move(tried.get(), ""));
    }
    return CurrentRows.move(look)
        .map(prices::of)
        .or(() -> BenchRom.named(look).map(this::benchRom))
        .orElseGet(() -> prices.of(Look.parse(look)));
  }

  private Price benchRom(BenchRom way) {
    Price price = prices.of(new Move(Moves.BENCH_ROM, ""));
    return way == BenchRom.ALONE ? price : price.plus(prices.of(new Move(Moves.RETURN_LEADS, "")));
  }

  @Override
  public Price repair(RepairAction action) {
    return prices.of(Move.repair(action)).plus(prices.of(new Move(Moves.QUICK_CHECK, "")));
  }
}
