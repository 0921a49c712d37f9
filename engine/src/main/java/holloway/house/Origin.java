package holloway.house;

/**
 * Where a quantity is from: taped by the person, found behind the board, stated without a tape (a
 * choice), or assumed by place and era.
 */
public enum Origin {
  MEASURED,
  FOUND,
  STATED,
  ASSUMED
}
