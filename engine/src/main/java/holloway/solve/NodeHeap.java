package holloway.solve;

import java.util.Arrays;

/** A binary heap of nodes (or states of nodes) by distance, the lower id first of equals. */
final class NodeHeap {
  private final long[] distance;
  private final int[] heap;
  private final int[] place;
  private int size;

  /**
   * @param distance by node; lowered by the caller before {@link #put}
   */
  NodeHeap(long[] distance) {
    this.distance = distance;
    heap = new int[distance.length];
    place = new int[distance.length];
    Arrays.fill(place, -1);
  }

  boolean isEmpty() {
    return size == 0;
  }

  void clear() {
    for (int i = 0; i < size; i++) {
      place[heap[i]] = -1;
    }
    size = 0;
  }

  /** Adds a node or moves it up after its distance fell. */
  void put(int node) {
    int at = place[node] < 0 ? size++ : place[node];
    while (at > 0 && before(node, heap[(at - 1) >> 1])) {
      set(at, heap[(at - 1) >> 1]);
      at = (at - 1) >> 1;
    }
    set(at, node);
  }

  int pop() {
    int top = heap[0];
    place[top] = -1;
    int last = heap[--size];
    int at = 0;
    while (2 * at + 1 < size) {
      int child = 2 * at + 1;
      if (child + 1 < size && before(heap[child + 1], heap[child])) {
        child++;
      }
      if (!before(heap[child], last)) {
        break;
      }
      set(at, heap[child]);
      at = child;
    }
    if (size > 0) {
      set(at, last);
    }
    return top;
  }

  private boolean before(int a, int b) {
    return distance[a] < distance[b] || distance[a] == distance[b] && a < b;
  }

  private void set(int at, int node) {
    heap[at] = node;
    place[node] = at;
  }
}
