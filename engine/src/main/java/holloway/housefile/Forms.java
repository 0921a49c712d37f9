package holloway.housefile;

import holloway.geometry.Turn;
import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.Lining;
import holloway.house.Origin;
import holloway.house.Room;
import holloway.house.Side;
import holloway.house.WallTraits;
import holloway.house.Where;
import holloway.request.Wishes;
import holloway.units.Length;
import holloway.units.LengthParser;
import holloway.units.LengthText;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads each form of text; every method throws {@link Refused} with a teaching message. */
final class Forms {
  private static final Pattern SIDE_LAST =
      Pattern.compile("(?:(.*) )?(north|east|south|west)(?: ([1-9]))?");
  private static final List<String> SIDES = Arrays.stream(Side.values()).map(Side::word).toList();

  private Forms() {}

  /** A depth of attic insulation and its kind. */
  record Insulation(Fact<Length> depth, Optional<Fill> fill) {}

  /** A pitch as rise over run. */
  record Pitch(int rise, int run) {}

  static Fact<Length> length(String text, Length least, Length most, Where where) {
    LengthParser.Taped taped;
    try {
      taped = LengthParser.parse(text);
    } catch (IllegalArgumentException e) {
      String examples = "a length like " + LengthParser.EXAMPLES;
      throw new Refused(e.getMessage().replace(": " + LengthParser.EXAMPLES, ""), examples);
    }
    Length v = taped.value();
    if (v.compareTo(least) < 0 || v.compareTo(most) > 0) {
      throw new Refused(outOfRange(v, least, most), "a length " + range(least, most));
    }
    return new Fact<>(v, taped.spread().orElse(Fact.TAPE), Origin.MEASURED, where);
  }

  private static String outOfRange(Length v, Length least, Length most) {
    if (v.nm() <= 0 && least.nm() >= 0) {
      return v.nm() < 0
          ? "this length cannot be negative"
          : "this length must be more than nothing";
    }
    return LengthText.metric(v) + " is too " + (v.compareTo(most) > 0 ? "long" : "short") + " here";
  }

  static String range(Length least, Length most) {
    return "from " + LengthText.metric(least) + " to " + LengthText.metric(most);
  }

  static Fact<Length> length(String text, Where where) {
    Shape.Len any = (Shape.Len) Shape.LENGTH;
    return length(text, any.least(), any.most(), where);
  }

  static Along along(String text, Where where) {
    int blank = text.indexOf(' ');
    String first = blank < 0 ? text : text.substring(0, blank);
    Optional<Side> side = findSide(first);
    if (side.isEmpty()) {
      String nearest = Nearest.of(first, SIDES);
      throw new Refused(
          "a distance along a wall starts with the end it is taped from",
          Form.ALONG.expected(),
          nearest);
    }
    if (blank < 0) {
      throw new Refused("the distance is missing", Form.ALONG.expected());
    }
    Shape.Len any = (Shape.Len) Shape.HEIGHT;
    return new Along(
        side.get(), length(text.substring(blank + 1).strip(), any.least(), any.most(), where));
  }

  /** A distance from the side that is said, or from the west or south. */
  static Fact<Length> row(String text, Where where) {
    return isFromSide(text) ? along(text, where).distance() : length(text, where);
  }

  static boolean isFromSide(String text) {
    return findSide(text.split(" ", 2)[0]).isPresent();
  }

  static Optional<Side> findSide(String word) {
    return Arrays.stream(Side.values()).filter(s -> s.word().equals(word)).findFirst();
  }

  static FaceRef face(String text, Names names, Where where) {
    Matcher m = SIDE_LAST.matcher(text);
    if (!m.matches() || m.group(1) == null) {
      String last = text.substring(text.lastIndexOf(' ') + 1);
      throw new Refused(
          "a face is a room and one of its sides", Form.FACE.expected(), Nearest.of(last, SIDES));
    }
    String room = Names.known(m.group(1), names.rooms(), "room");
    return new FaceRef(room, findSide(m.group(2)).orElseThrow(), ordinal(m), where);
  }

  static FaceRef sideOf(String room, String text, Where where) {
    Matcher m = SIDE_LAST.matcher(text);
    if (!m.matches() || m.group(1) != null) {
      throw new Refused(
          "this is not a side", Form.SIDE_OF_ROOM.expected(), Nearest.of(text, SIDES));
    }
    return new FaceRef(room, findSide(m.group(2)).orElseThrow(), ordinal(m), where);
  }

  private static int ordinal(Matcher m) {
    return m.group(3) == null ? 1 : Integer.parseInt(m.group(3));
  }

  static Room.Size size(String text, Where where) {
    String[] parts = text.split(" ?[x\u00d7] ?", -1);
    if (parts.length != 2) {
      throw new Refused("a size is two lengths with an x between them", Form.SIZE.expected());
    }
    return new Room.Size(length(parts[0].strip(), where), length(parts[1].strip(), where));
  }

  /** A layer of a lining: what it is and how thick, 3 mm to 150 mm. */
  static WallTraits.Layer layer(String text, Where where) {
    int blank = text.indexOf(' ');
    String what = blank < 0 ? text : text.substring(0, blank);
    List<String> words =
        Arrays.stream(Lining.values()).filter(l -> l != Lining.OPEN).map(Shape::word).toList();
    if (!words.contains(what)) {
      throw new Refused("no such lining", Form.LAYER.expected(), Nearest.of(what, words));
    }
    if (blank < 0) {
      throw new Refused("a layer says how thick it is", Form.LAYER.expected(), what + " 1/2 in");
    }
    String thick = text.substring(blank + 1).strip();
    return new WallTraits.Layer(
        Lining.values()[words.indexOf(what)], length(thick, Length.mm(3), Length.mm(150), where));
  }

  static List<Side> align(String text) {
    List<Side> sides =
        Arrays.stream(text.split("-")).map(Forms::findSide).flatMap(Optional::stream).toList();
    boolean ok =
        sides.size() == text.split("-").length
            && (sides.size() == 1
                || sides.size() == 2
                    && sides.get(0).runsEastWest()
                    && !sides.get(1).runsEastWest());
    if (!ok) {
      List<String> words =
          List.of(
              "north",
              "east",
              "south",
              "west",
              "north-east",
              "north-west",
              "south-east",
              "south-west");
      throw new Refused(
          "this is no side or corner", Form.ALIGN.expected(), Nearest.of(text, words));
    }
    return sides;
  }

  static Pitch pitch(String text) {
    Matcher ratio = Pattern.compile("(\\d{1,3})/(\\d{1,3})").matcher(text);
    if (ratio.matches()) {
      int rise = Integer.parseInt(ratio.group(1));
      int run = Integer.parseInt(ratio.group(2));
      if (run > 0 && rise <= 3 * run) {
        return new Pitch(rise, run);
      }
      throw new Refused("no roof is as steep as that", Form.PITCH.expected());
    }
    Matcher degrees = Pattern.compile("(\\d{1,2}(?:\\.\\d{1,3})?) ?deg").matcher(text);
    if (degrees.matches() && Double.parseDouble(degrees.group(1)) <= 70) {
      double angle = StrictMath.toRadians(Double.parseDouble(degrees.group(1)));
      return new Pitch((int) Math.round(10_000 * StrictMath.tan(angle)), 10_000);
    }
    throw new Refused("this is not a pitch", Form.PITCH.expected());
  }

  static Turn turn(String text) {
    Matcher m =
        Pattern.compile("(\\d{1,3}(?:\\.\\d{1,9})?) ?deg (clockwise|counter-clockwise)")
            .matcher(text);
    if (!m.matches()) {
      throw new Refused(
          "say how far the house stands turned and which way, seen from above",
          Form.TURN.expected());
    }
    double degrees = Double.parseDouble(m.group(1));
    if (degrees > 180) {
      throw new Refused("more than half a turn is less the other way round", Form.TURN.expected());
    }
    return Turn.degrees(m.group(2).equals("clockwise") ? -degrees : degrees);
  }

  static Insulation insulation(String text, Where where) {
    if (text.equals("none")) {
      return new Insulation(Fact.stated(Length.ZERO, where), Optional.of(Fill.EMPTY));
    }
    Matcher m = Pattern.compile("(.*\\S) ([a-z]+(?:-[a-z]+)*)").matcher(text);
    if (!m.matches() || m.group(2).matches("in|inch|inches|ft|feet|foot|mm|cm|m")) {
      return new Insulation(length(text, where), Optional.empty());
    }
    List<String> words = ((Shape.Words) Shape.wordsOf(Fill.class)).words();
    int at = words.indexOf(m.group(2));
    if (at < 0) {
      throw new Refused(
          "no such kind of insulation", Form.INSULATION.expected(), Nearest.of(m.group(2), words));
    }
    return new Insulation(length(m.group(1), where), Optional.of(Fill.values()[at]));
  }

  /** Whole degrees Celsius, rounded down: colder is the safe side. */
  static int celsius(String text) {
    Matcher m = Pattern.compile("(-?\\d{1,3}) ?([CF])").matcher(text);
    if (!m.matches()) {
      throw new Refused("this is no temperature", Form.TEMPERATURE.expected());
    }
    int n = Integer.parseInt(m.group(1));
    int c = m.group(2).equals("C") ? n : Math.floorDiv((n - 32) * 5, 9);
    if (c < -60 || c > 60) {
      throw new Refused("nobody pulls cable at " + c + " C", Form.TEMPERATURE.expected());
    }
    return c;
  }

  /** A part of a whole, more than nothing. */
  static double share(String text) {
    Matcher percent = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,2})?) ?%").matcher(text);
    Matcher ratio = Pattern.compile("([1-9])/([1-9]\\d?)").matcher(text);
    double share =
        percent.matches()
            ? Double.parseDouble(percent.group(1)) / 100
            : ratio.matches()
                ? Double.parseDouble(ratio.group(1)) / Integer.parseInt(ratio.group(2))
                : 0;
    if (share <= 0 || share > 1) {
      throw new Refused("this is no share of a whole", Form.SHARE.expected());
    }
    return share;
  }

  static Wishes.Money money(String text) {
    if (!text.matches("\\d{1,9}(\\.\\d{1,2})? [A-Z]{3}")) {
      throw new Refused("this is not an amount of money", Form.MONEY.expected());
    }
    String[] parts = text.split(" ");
    long cents = new BigDecimal(parts[0]).movePointRight(2).longValueExact();
    return new Wishes.Money(cents, parts[1]);
  }

  /** More could not be told from what cannot be had at all. */
  private static final double MOST_MINUTES = 600_000;

  private static final String LONG_TIME = "a time is at most 10000 h";

  static double minutes(String text) {
    Matcher m = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,4})?) ?(min|h)").matcher(text);
    if (!m.matches()) {
      boolean large = text.matches("\\d{7,}(\\.\\d+)? ?(min|h)");
      throw new Refused(large ? LONG_TIME : "a time needs a unit", Form.MINUTES.expected());
    }
    double minutes = Double.parseDouble(m.group(1)) * (m.group(2).equals("h") ? 60 : 1);
    if (minutes > MOST_MINUTES) {
      throw new Refused(LONG_TIME, Form.MINUTES.expected());
    }
    return minutes;
  }

  static String name(String text) {
    if (text.isBlank() || !text.equals(text.strip())) {
      throw new Refused(
          "a name cannot be empty or begin or end with a blank", Form.NAME.expected());
    }
    boolean bad =
        text.length() > 60 || text.chars().anyMatch(c -> c < ' ' || "/\\".indexOf(c) >= 0);
    if (bad) {
      throw new Refused("a name has at most 60 letters and no / or \\", Form.NAME.expected());
    }
    return text;
  }

  static Optional<Boolean> yesNo(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "yes", "true" -> Optional.of(true);
      case "no", "false" -> Optional.of(false);
      default -> Optional.empty();
    };
  }
}
