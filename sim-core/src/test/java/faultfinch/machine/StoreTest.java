package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class StoreTest {
  private static final int WORDS = 5;
  private static final int CELLS = 300;
  private final Store store = new Store(WORDS, CELLS);
  private final SplittableRandom random = new SplittableRandom(3);

  @Test
  void back_whateverAndHoweverOftenWasWritten_isWhatStoodAtTheBeginning() {
    for (int trial = 0; trial < 20; trial++) {
      write(400);
      Store stood = store.copy();
      store.begin();
      write(10 * trial * trial);
      store.back();
      assertArrayEquals(stood.cells(), store.cells());
      assertArrayEquals(stood.words(), store.words());
    }
  }

  @Test
  void back_cellWrittenOutsideATrial_staysWritten() {
    store.begin();
    store.put(7, (byte) 1);
    store.back();
    store.put(7, (byte) 2);
    store.begin();
    store.back();
    assertEquals(2, store.cells()[7]);
  }

  private void write(int times) {
    for (int i = 0; i < times; i++) {
      store.put(random.nextInt(CELLS), (byte) random.nextInt());
      store.words()[random.nextInt(WORDS)] = random.nextLong();
    }
  }
}
