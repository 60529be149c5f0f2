package faultfinch.attempt;

import faultfinch.format.Case;
import java.util.List;
import java.util.OptionalInt;

/** What the dictionary of a board can tell about an attempt; asked only, it never acts. */
interface Adviser {

  /** How many different repairs could still be the right one. */
  OptionalInt field(Facts facts);

  /** What is still possible, likeliest first. */
  List<Suspect> suspects(Facts facts);

  /** Whether, knowing this much, another look was worth its price before any repair. */
  boolean lookFirst(Facts facts);

  /** The way the planner goes on the case's board. */
  Debrief.Best best(Case job);
}
