package faultfinch.diagnosis;

/**
 * A place in the firmware.
 *
 * @param label the nearest label at or below the address; empty where the ROM has none
 * @param offset bytes behind the label
 * @param rom reference of the ROM; empty outside of all of them
 */
public record Routine(int address, String label, int offset, String rom) {

  /** Whether a label tells where it is. */
  public boolean named() {
    return !label.isEmpty();
  }
}
