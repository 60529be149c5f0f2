package faultfinch.attempt;

import faultfinch.bench.Bench;
import faultfinch.bench.Job;
import faultfinch.bench.Look;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A healthy board beside yours that goes through the same moves; it catches up when it is asked.
 */
final class Twin {
  private final Job healthy;
  private final List<Move> moves = new ArrayList<>();
  private Optional<Bench> bench = Optional.empty();

  Twin(Job healthy) {
    this.healthy = healthy;
  }

  /** A move was made; looks leave no trace and are not followed. */
  void follow(Move move) {
    if (move.kind() != Moves.LOOK && move.kind() != Moves.ASK) {
      moves.add(move);
    }
  }

  /**
   * What the twin shows.
   *
   * @throws IllegalArgumentException if it cannot be looked at so now
   */
  Reading look(Look look) {
    if (bench.isEmpty()) {
      bench = Optional.of(new Bench(healthy));
    }
    for (Move move : moves) {
      bench.get().perform(move);
    }
    moves.clear();
    return bench.get().perform(Move.look(look)).reading();
  }
}
