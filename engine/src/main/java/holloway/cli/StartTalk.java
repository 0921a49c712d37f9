package holloway.cli;

import holloway.pipeline.StartWishes;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The questions of {@code start} on a terminal: what a first house file should hold, and where. */
final class StartTalk {
  static final List<String> PLACES = List.of("us", "uk", "eu", "none");

  private StartTalk() {}

  /** What was answered. */
  record Answered(StartWishes wishes, Path file) {}

  static Answered with(Questions q, String schema) {
    String name = q.ask("What do you call the house?", "My House", a -> Optional.empty());
    String place =
        q.ask(
            "Whose building rules, us, uk, eu or none?",
            "us",
            a -> unless(PLACES.contains(a), "One of us, uk, eu and none, please."));
    String built =
        q.ask(
            "Built in which year? It tells what is likely behind the board; 0 if not known.",
            "0",
            a -> unless(isYear(a), "A year from 1600 to 2100, or 0, please."));
    String levels =
        q.ask(
            "How many storeys, 1 to 3?",
            "1",
            a -> unless(a.matches("[1-3]"), "1, 2 or 3, please."));
    String units =
        q.ask(
            "Does your tape read feet or metres?",
            place.equals("us") ? "feet" : "metres",
            a -> unless(a.equals("feet") || a.equals("metres"), "feet or metres, please."));
    String file = q.ask("Write it to which file?", "house.yaml", StartTalk::free);
    return new Answered(
        new StartWishes(
            schema,
            name,
            place,
            Integer.parseInt(built),
            Integer.parseInt(levels),
            units.equals("metres")),
        Path.of(file));
  }

  private static Optional<String> unless(boolean good, String says) {
    return good ? Optional.empty() : Optional.of(says);
  }

  private static boolean isYear(String a) {
    return a.equals("0") || isYear(a.matches("\\d{4}") ? Integer.parseInt(a) : -1);
  }

  static boolean isYear(int year) {
    return year == 0 || year >= 1600 && year <= 2100;
  }

  private static Optional<String> free(String file) {
    try {
      boolean free = !Files.exists(Path.of(file));
      return unless(free, file + " is there already; name another, please.");
    } catch (InvalidPathException e) {
      return Optional.of("That is no name for a file.");
    }
  }
}
