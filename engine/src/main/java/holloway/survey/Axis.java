package holloway.survey;

import holloway.house.Side;

/** One of the three adjusted networks. */
enum Axis {
  X("east-west"),
  Y("north-south"),
  Z("heights");

  private final String word;

  Axis(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  /** The axis on which the position of a face of that side is one number. */
  static Axis across(Side side) {
    return side.runsEastWest() ? Y : X;
  }
}
