package holloway.housefile;

/** What every part of the reading needs: where problems go, which names there are, and the era. */
record Desk(Problems problems, Names names, Era era) {}
