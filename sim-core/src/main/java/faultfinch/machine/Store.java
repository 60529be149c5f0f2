package faultfinch.machine;

/** All stored state of the parts of one machine: a copy of it is a checkpoint. */
final class Store {
  private final long[] words;
  private final byte[] cells;
  private final Undo undo;

  Store(int words, int cells) {
    this(new long[words], new byte[cells]);
  }

  private Store(long[] words, byte[] cells) {
    this.words = words;
    this.cells = cells;
    this.undo = new Undo(words, cells);
  }

  long[] words() {
    return words;
  }

  /** To be read; a part writes by {@link #put} so that a trial can be undone. */
  byte[] cells() {
    return cells;
  }

  /** Writes a cell for a part. */
  void put(int cell, byte value) {
    undo.note(cell);
    cells[cell] = value;
  }

  /** A trial begins: what parts store from here on is put back by {@link #back}. */
  void begin() {
    undo.begin();
  }

  /** All stands as it did when the trial began. */
  void back() {
    undo.back();
  }

  Store copy() {
    return new Store(words.clone(), cells.clone());
  }

  void set(Store other) {
    System.arraycopy(other.words, 0, words, 0, words.length);
    System.arraycopy(other.cells, 0, cells, 0, cells.length);
  }
}
