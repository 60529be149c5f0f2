package faultfinch.fault;

import faultfinch.board.Board;
import faultfinch.board.Supply;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A brick that sags under load, gives too little, ripples because its capacitor has dried out, or
 * gives nothing.
 *
 * @param noLoadMillivolts what it gives with nothing drawn
 * @param milliohms its source resistance
 */
public record BrickFault(Way way, int noLoadMillivolts, int milliohms) implements Fault {

  /** The ways a brick fails. */
  public enum Way {
    SAGS,
    LOW,
    DEAD,
    RIPPLES
  }

  static Optional<Fault> read(Words words) {
    String text = words.normal();
    return sites(words.anatomy()).stream().filter(f -> f.text().equals(text)).findFirst();
  }

  static List<Fault> sites(Anatomy anatomy) {
    Board board = anatomy.board();
    return Arrays.stream(Way.values())
        .filter(w -> w != Way.RIPPLES || board.brickMicrofarads() > 0)
        .<Fault>map(w -> of(w, board.supply()))
        .toList();
  }

  private static BrickFault of(Way way, Supply supply) {
    return switch (way) {
      case SAGS -> {
        int ohms = supply.ohms() * Figures.number("brick.sags.percent") / 100;
        yield new BrickFault(way, supply.noLoadVolts(), ohms);
      }
      case LOW -> {
        int volts = supply.noLoadVolts() * Figures.number("brick.low.percent") / 100;
        yield new BrickFault(way, volts, supply.ohms());
      }
      case DEAD -> new BrickFault(way, 0, supply.ohms());
      case RIPPLES -> new BrickFault(way, supply.noLoadVolts(), supply.ohms());
    };
  }

  @Override
  public String text() {
    return "brick: " + way.name().toLowerCase(Locale.ROOT);
  }

  @Override
  public String place() {
    return "brick";
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.BRICK;
  }

  @Override
  public Seat seat() {
    return Seat.SUPPLY;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of("what the brick gives");
  }

  @Override
  public void applyTo(Harm harm) {
    if (way == Way.RIPPLES) {
      harm.brickCapacitor(Figures.number("brick.ripples.percent"));
    } else {
      harm.brick(noLoadMillivolts, milliohms);
    }
  }
}
