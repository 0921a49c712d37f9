package holloway.desk;

import holloway.look.Key;
import java.util.Arrays;
import java.util.Optional;

/** All that a key does; the help is made of this list. */
enum Act {
  HELP(Key.H, "H", "this help"),
  LEAVE(Key.ESCAPE, "Esc", "leave the walk, the choice or the help"),
  PEEL(Key.P, "P", "take finishes off: to look through, then all"),
  COVER(Key.P, true, "Shift P", "put finishes back on"),
  LEVELS(Key.DIGIT_1, "1 2 3 ...", "show or hide that level; 0 shows all"),
  SLICE(Key.C, "C", "cut a slice: from the west, the south, the floor, none"),
  AHEAD(Key.RIGHT, "Right", "next step of a walk; else the slice farther"),
  BACK(Key.LEFT, "Left", "step before; else the slice nearer"),
  THICKER(Key.PERIOD, ".", "a thicker slice; a chosen outlet farther along its wall"),
  THINNER(Key.COMMA, ",", "a thinner slice; a chosen outlet back along its wall"),
  PAGE(Key.TAB, "Tab", "runs, holes, findings, changes"),
  NEXT(Key.DOWN, "Down", "next in the list"),
  PREVIOUS(Key.UP, "Up", "the one before"),
  GO(Key.ENTER, "Enter", "go to what is chosen"),
  WALK(Key.W, "W", "walk the chosen run from its beginning"),
  FORBID(Key.F, "F", "forbid the chosen hole or hollow, or the hollow of this step"),
  FORBID_SPACE(Key.G, "G", "forbid the hollow behind the chosen hole"),
  PIN(Key.I, "I", "keep the chosen run in the hollow of this step; again: free it"),
  OUTLET(Key.O, "O", "choose the next outlet, to slide it"),
  BOTH(Key.V, "V", "the plan of before beside the plan of now"),
  UNDO(Key.U, "U", "undo"),
  REDO(Key.R, "R", "do again"),
  SAVE(Key.S, "S", "save the changes as wishes beside the house file"),
  THEME(Key.D, "D", "dusk or light"),
  FATTER(Key.T, "T", "cables thicker"),
  FINER(Key.T, true, "Shift T", "cables thinner"),
  LARGER(Key.PLUS, "+", "larger type"),
  SMALLER(Key.MINUS, "-", "smaller type"),
  WHOLE(Key.HOME, "Home", "the whole house"),
  NEAR(Key.PAGE_UP, "Page up", "nearer"),
  FAR(Key.PAGE_DOWN, "Page down", "farther"),
  TURN_LEFT(Key.A, "A", "turn left"),
  TURN_RIGHT(Key.E, "E", "turn right"),
  TURN_UP(Key.Y, "Y", "look from higher up"),
  TURN_DOWN(Key.X, "X", "look from lower down"),
  QUIT(Key.Q, "Q", "close");

  final Key key;
  final boolean shift;
  final String said;
  final String does;

  Act(Key key, String said, String does) {
    this(key, false, said, does);
  }

  Act(Key key, boolean shift, String said, String does) {
    this.key = key;
    this.shift = shift;
    this.said = said;
    this.does = does;
  }

  /** What a key does; with shift, what it does without where shift means nothing of its own. */
  static Optional<Act> of(Key key, boolean shift) {
    Optional<Act> exact =
        Arrays.stream(values()).filter(a -> a.key == key && a.shift == shift).findFirst();
    return exact.or(() -> Arrays.stream(values()).filter(a -> a.key == key).findFirst());
  }
}
