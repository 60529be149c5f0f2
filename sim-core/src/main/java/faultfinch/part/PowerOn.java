package faultfinch.part;

/** Chance at power-on: what uninitialised cells wake up as, the same for the same power-on. */
@FunctionalInterface
public interface PowerOn {

  /** A seeded 64-bit number for the event with this index within the part. */
  long draw(int index);
}
