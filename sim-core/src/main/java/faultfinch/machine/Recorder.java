package faultfinch.machine;

/** Notes what parts do while the fast machine asks the plain one about a cycle. */
interface Recorder {
  /** Notes nothing. */
  Recorder NONE =
      new Recorder() {
        @Override
        public void held(int part, boolean changed) {}

        @Override
        public void looked(int part, int cell) {}

        @Override
        public void stored(int part, int cell) {}
      };

  /** A part stored a word, another one or the same. */
  void held(int part, boolean changed);

  /** A part looked a cell up. */
  void looked(int part, int cell);

  /** A part stored a cell, changed or not. */
  void stored(int part, int cell);
}
