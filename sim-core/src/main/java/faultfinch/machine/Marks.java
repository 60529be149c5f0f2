package faultfinch.machine;

/**
 * Which outputs are to be settled, and which sleep: an output that drives nothing and by an enable
 * pin goes on so is not looked at again before that pin moves.
 */
final class Marks {
  final long[] dirty;
  final long[] asleep;

  Marks(Circuit circuit) {
    dirty = new long[NodeSet.words(circuit)];
    asleep = new long[dirty.length];
  }
}
