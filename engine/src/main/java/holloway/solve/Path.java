package holloway.solve;

/** A walk: its first node, the arcs in order, and what the search thought it costs. */
record Path(int start, int[] arcs, long price) {
  int end(Network net) {
    return arcs.length == 0 ? start : net.head[arcs[arcs.length - 1]];
  }
}
