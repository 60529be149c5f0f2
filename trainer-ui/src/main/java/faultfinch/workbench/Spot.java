package faultfinch.workbench;

import faultfinch.board.Net;
import faultfinch.board.PadPlace;

/** What lies under the hand. */
public sealed interface Spot {

  /** A pin of a part. */
  record OnPin(PadPlace place) implements Spot {}

  /** The body of a part. */
  record OnPart(String ref) implements Spot {}

  /** A piece of track. */
  record OnTrack(String net, Net.Segment segment) implements Spot {}

  /** The board itself. */
  record OnBoard() implements Spot {}

  /** The brick that feeds the board. */
  record OnBrick() implements Spot {}

  /** The display as its owner sees it. */
  record OnMonitor() implements Spot {}

  /** The owner, who can be asked. */
  record OnOwner() implements Spot {}

  /** Nothing of interest. */
  record Nowhere() implements Spot {}
}
