package faultfinch.signal;

/** What an instrument says of one point at one moment; mid is 0.8 to 2.0 V. */
public enum Level {
  LOW,
  HIGH,
  MID,
  FLOATING
}
