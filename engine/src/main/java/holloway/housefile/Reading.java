package holloway.housefile;

import holloway.house.House;
import holloway.request.Request;
import java.util.List;

/** What reading a house file gives: the house and what is wanted of it, or all its problems. */
public sealed interface Reading {
  /** The file and its companions are sound. */
  record Sound(House house, Request request) implements Reading {}

  /** Nothing can be planned; the problems are sorted by file and line and never empty. */
  record Faulty(List<Problem> problems) implements Reading {
    public Faulty {
      problems = List.copyOf(problems);
    }
  }
}
