package faultfinch.machine;

/** All stored state of the parts of one machine: a copy of it is a checkpoint. */
record Store(long[] words, byte[] cells) {

  Store(int words, int cells) {
    this(new long[words], new byte[cells]);
  }

  Store copy() {
    return new Store(words.clone(), cells.clone());
  }

  void set(Store other) {
    System.arraycopy(other.words, 0, words, 0, words.length);
    System.arraycopy(other.cells, 0, cells, 0, cells.length);
  }
}
