package faultfinch.judging;

import faultfinch.bench.Price;
import java.util.Optional;

/**
 * What a job cost, the passed retest included.
 *
 * @param innocent chips taken out by a move that did not cure
 * @param looks made
 * @param repairs made, the one that cured included
 * @param first what was believed as the first repair was made; empty for whoever does not weigh
 */
public record Bill(Price price, int innocent, int looks, int repairs, Optional<FirstAct> first) {

  /**
   * The first repair.
   *
   * @param belief chance it was given of helping, 0 to 1
   * @param helped whether it did
   * @param place of the repair that was due in the list of those that may be, from 1; 0 if it is
   *     not there
   */
  public record FirstAct(double belief, boolean helped, int place) {}
}
