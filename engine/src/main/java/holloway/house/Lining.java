package holloway.house;

/**
 * What a wall or ceiling shows to the room. OPEN: bare framing (a cellar ceiling, an unlined garage
 * wall).
 */
public enum Lining {
  BOARD,
  PLASTER,
  LATH_AND_PLASTER,
  TILE,
  PANEL,
  OPEN
}
