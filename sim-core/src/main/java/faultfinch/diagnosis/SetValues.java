package faultfinch.diagnosis;

/** A number for sets of up to 64 members, each a bit; a hash table without boxes. */
final class SetValues {
  private long[] keys = new long[1 << 10];
  private double[] values = new double[1 << 10];
  private int size;

  /** NaN if the set has none. */
  double get(long set) {
    int at = place(set);
    return keys[at] == set ? values[at] : Double.NaN;
  }

  /** The empty set has no number. */
  void put(long set, double value) {
    int at = place(set);
    if (keys[at] != set) {
      keys[at] = set;
      size++;
    }
    values[at] = value;
    if (2 * size > keys.length) {
      grow();
    }
  }

  private void grow() {
    long[] oldKeys = keys;
    double[] oldValues = values;
    keys = new long[2 * oldKeys.length];
    values = new double[2 * oldKeys.length];
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldKeys[i] != 0) {
        int at = place(oldKeys[i]);
        keys[at] = oldKeys[i];
        values[at] = oldValues[i];
      }
    }
  }

  private int place(long set) {
    long mixed = set * 0x9E3779B97F4A7C15L;
    int at = (int) (mixed >>> 32) & keys.length - 1;
    while (keys[at] != 0 && keys[at] != set) {
      at = at + 1 & keys.length - 1;
    }
    return at;
  }
}
