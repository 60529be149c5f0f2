package faultfinch.board;

import java.util.Arrays;

/** Points still to be looked at, the most promising first; a heap of longs, to spare boxes. */
final class Frontier {
  private long[] heap = new long[1024];
  private int size;

  void clear() {
    size = 0;
  }

  boolean isEmpty() {
    return size == 0;
  }

  void add(int promise, int point) {
    if (size == heap.length) {
      heap = Arrays.copyOf(heap, 2 * size);
    }
    long entry = (long) promise << 32 | point;
    int at = size++;
    while (at > 0 && heap[(at - 1) / 2] > entry) {
      heap[at] = heap[(at - 1) / 2];
      at = (at - 1) / 2;
    }
    heap[at] = entry;
  }

  int take() {
    long first = heap[0];
    long entry = heap[--size];
    int at = 0;
    while (2 * at + 1 < size) {
      int child = 2 * at + 1;
      if (child + 1 < size && heap[child + 1] < heap[child]) {
        child++;
      }
      if (heap[child] >= entry) {
        break;
      }
      heap[at] = heap[child];
      at = child;
    }
    heap[at] = entry;
    return (int) first;
  }
}
