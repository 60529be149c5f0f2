package faultfinch.judging;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.diagnosis.Suspect;
import faultfinch.fault.Lot;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Draws boards with two faults, each of which somebody would notice if it were alone, and which no
 * repair surely cures both. The first is drawn by weight; of every second board the other is drawn
 * from the parts that a net other than a supply joins to it, else from all.
 */
final class PairDraw {
  private static final int FIRST = 83;
  private static final int SECOND = 89;

  private final Board board;
  private final List<Suspect> noticed;

  PairDraw(Board board, List<Suspect> noticed) {
    this.board = board;
    this.noticed = List.copyOf(noticed);
  }

  /** So many boards; fewer if there is nothing to draw. */
  List<PairJob> draw(int count, long seed) {
    List<PairJob> jobs = new ArrayList<>();
    for (int i = 0; i < count && noticed.size() > 1; i++) {
      Suspect one = at(noticed, Lot.share(seed, FIRST, i));
      Predicate<Suspect> other = s -> s != one && isApart(one, s);
      Set<String> joined = i % 2 == 0 ? joined(one.place()) : Set.of();
      List<Suspect> near =
          noticed.stream().filter(other.and(s -> joined.contains(s.place()))).toList();
      List<Suspect> from = near.isEmpty() ? noticed.stream().filter(other).toList() : near;
      if (!from.isEmpty()) {
        jobs.add(new PairJob(one, at(from, Lot.share(seed, SECOND, i)), !near.isEmpty()));
      }
    }
    return jobs;
  }

  private static boolean isApart(Suspect one, Suspect other) {
    return one.cures().keySet().stream()
        .noneMatch(a -> one.surelyCuredBy(a) && other.surelyCuredBy(a));
  }

  /** Parts that a net joins to a part, supplies left out; none if it is no part. */
  private Set<String> joined(String ref) {
    Set<String> joined = new LinkedHashSet<>();
    for (Net net : board.nets()) {
      boolean supply =
          board.supply().feeds(net.name()) || net.name().equals(board.supply().groundNet());
      if (!supply && net.pads().stream().anyMatch(p -> p.ref().equals(ref))) {
        net.pads().stream().map(Pad::ref).filter(r -> !r.equals(ref)).forEach(joined::add);
      }
    }
    return joined;
  }

  private static Suspect at(List<Suspect> suspects, double share) {
    double left = share * suspects.stream().mapToDouble(Suspect::weight).sum();
    for (Suspect suspect : suspects.subList(0, suspects.size() - 1)) {
      if (left < suspect.weight()) {
        return suspect;
      }
      left -= suspect.weight();
    }
    return suspects.get(suspects.size() - 1);
  }
}
