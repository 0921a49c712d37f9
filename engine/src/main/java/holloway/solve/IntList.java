package holloway.solve;

import java.util.Arrays;

/** A growing list of ints. */
final class IntList {
  private int[] values = new int[16];
  private int size;

  void add(int v) {
    if (size == values.length) {
      values = Arrays.copyOf(values, 2 * size);
    }
    values[size++] = v;
  }

  int get(int i) {
    return values[i];
  }

  void removeLast() {
    size--;
  }

  int size() {
    return size;
  }

  void clear() {
    size = 0;
  }

  int[] toArray() {
    return Arrays.copyOf(values, size);
  }
}
