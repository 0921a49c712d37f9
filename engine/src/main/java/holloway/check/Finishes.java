package holloway.check;

import holloway.framing.MemberKind;

/** What is a skin that a cut-out opens, told apart from what carries. */
final class Finishes {
  private Finishes() {}

  static boolean isFinish(MemberKind kind) {
    return kind == MemberKind.LINING || kind == MemberKind.CLADDING;
  }
}
