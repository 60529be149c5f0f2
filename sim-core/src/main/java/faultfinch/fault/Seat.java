package faultfinch.fault;

/** What a hand has to get at to cure a fault; cure sets of repair actions are told in these. */
public enum Seat {
  INSIDE,
  LEG,
  BENT_LEG,
  CONTACT,
  SEATING,
  JOINT,
  TRACK,
  BETWEEN_PADS,
  DIRT,
  SETTING,
  SOCKET_OF_ANOTHER,
  SUPPLY
}
