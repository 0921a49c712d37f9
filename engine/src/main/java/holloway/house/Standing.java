package holloway.house;

/** Whether a person works in a room. */
public enum Standing {
  OURS,
  /** Its size is known, or about; nothing is assumed inside it. */
  NOT_SURVEYED,
  /** A neighbour's: nothing is led through it, over it or under it, or done from it. */
  SOMEBODY_ELSES;

  /** May a person stand and a cable lie here? */
  public boolean isOpen() {
    return this == OURS;
  }
}
