package holloway.housefile;

import holloway.house.Where;

/** Holds one text against a scalar shape; throws {@link Refused} when it does not fit. */
final class ScalarCheck {
  private ScalarCheck() {}

  static void check(Marked.Scalar s, Shape shape, Desk desk, String what) {
    if (shape instanceof Shape.Len len) {
      Forms.length(s.text(), len.least(), len.most(), s.where());
    } else if (shape instanceof Shape.Words words) {
      word(s.text(), words, what);
    } else if (shape instanceof Shape.Whole whole) {
      whole(s.text(), whole, what);
    } else if (shape instanceof Shape.YesNo) {
      if (Forms.yesNo(s.text()).isEmpty()) {
        throw new Refused(what + " is yes or no", "yes or no");
      }
    } else if (shape instanceof Shape.Text text) {
      form(s.text(), text.form(), s.where(), desk);
    }
  }

  private static void word(String text, Shape.Words words, String what) {
    if (!words.words().contains(text)) {
      throw new Refused(
          what + " cannot be '" + text + "'",
          Describe.of(words),
          Nearest.of(text.replace(' ', '-').replace('_', '-'), words.words()));
    }
  }

  private static void whole(String text, Shape.Whole whole, String what) {
    boolean ok = text.matches("-?\\d{1,9}");
    int n = ok ? Integer.parseInt(text) : 0;
    if (!ok || n < whole.least() || n > whole.most()) {
      throw new Refused(what + " cannot be this", Describe.of(whole));
    }
  }

  private static void form(String text, Form form, Where where, Desk desk) {
    Names names = desk.names();
    switch (form) {
      case NAME, FILE -> Forms.name(text);
      case ROOM -> Names.known(text, names.rooms(), "room");
      case LEVEL -> Names.known(text, names.levels(), "level");
      case LEVEL_OR_ATTIC -> Names.known(text, Names.and(names.levels(), "attic"), "level");
      case OUTLET -> Names.known(text, Names.and(names.outlets(), "cabinet"), "outlet");
      case FACE -> Forms.face(text, names, where);
      case SIDE_OF_ROOM -> Forms.sideOf("", text, where);
      case ALONG -> Forms.along(text, where);
      case ROW -> Forms.row(text, where);
      case SIZE -> Forms.size(text, where);
      case TIMBER -> Timbers.wood(text, desk.era().built());
      case STUDS -> Timbers.parse(text, desk.era().built());
      case LAYER -> Forms.layer(text, where);
      case ALIGN -> Forms.align(text);
      case PITCH -> Forms.pitch(text);
      case TURN -> Forms.turn(text);
      case INSULATION -> Forms.insulation(text, where);
      case SHARE -> Forms.share(text);
      case TEMPERATURE -> Forms.celsius(text);
      case MONEY -> Forms.money(text);
      case MINUTES -> Forms.minutes(text);
      case ID -> {}
    }
  }
}
