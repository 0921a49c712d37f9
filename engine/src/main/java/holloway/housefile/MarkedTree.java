package holloway.housefile;

import holloway.house.Where;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Builds the marked values of one document from parse events. The parser hands them out one at a
 * time, so nesting is stopped before it can exhaust the stack, and every anchor, alias, tag and
 * doubled key is reported, not only the first.
 */
final class MarkedTree {
  static final int DEEPEST = 30;

  /** No name, length or word is longer. */
  static final int LONGEST = 500;

  private final String file;
  private final Problems problems;
  private final Deque<Open> open = new ArrayDeque<>();
  private Marked root;
  private int documents;

  private MarkedTree(String file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  /** Empty when there is no value or the text is no YAML; the problem is then recorded. */
  static Optional<Marked> of(String text, String file, Problems problems) {
    MarkedTree tree = new MarkedTree(file, problems);
    LoadSettings settings =
        LoadSettings.builder().setLabel(file).setCodePointLimit(8_000_000).build();
    try {
      Iterator<Event> events = new Parse(settings).parseString(text).iterator();
      while (events.hasNext()) {
        tree.take(events.next());
      }
      return Optional.ofNullable(tree.root);
    } catch (Refused stop) {
      return Optional.empty();
    } catch (MarkedYamlEngineException e) {
      Where at = e.getProblemMark().map(tree::where).orElse(tree.start());
      problems.add(at, lineOf(text, at), "YAML", "", SyntaxAdvice.of(e, lineOf(text, at)));
      return Optional.empty();
    } catch (YamlEngineException e) {
      problems.add(tree.start(), "", "text in YAML", "", "this is not YAML: " + e.getMessage());
      return Optional.empty();
    }
  }

  /** A list or map being filled. */
  private static final class Open {
    final boolean isMap;
    final Where where;
    final List<Marked> items = new ArrayList<>();
    final Map<String, Marked> values = new LinkedHashMap<>();
    final Map<String, Where> keys = new LinkedHashMap<>();
    Marked.Scalar key;
    boolean skipsValue;

    Open(boolean isMap, Where where) {
      this.isMap = isMap;
      this.where = where;
    }

    Marked close() {
      return isMap
          ? new Marked.Mapping(values, keys, where)
          : new Marked.Sequence(List.copyOf(items), where);
    }
  }

  private void take(Event event) {
    switch (event.getEventId()) {
      case DocumentStart -> startDocument(event);
      case Scalar -> {
        ScalarEvent s = (ScalarEvent) event;
        refuseExtras(s, s.getTag());
        put(scalar(s));
      }
      case SequenceStart, MappingStart -> startCollection((CollectionStartEvent) event);
      case SequenceEnd, MappingEnd -> put(open.pop().close());
      case Alias -> {
        problems.add(
            where(event),
            "*" + ((AliasEvent) event).getAlias(),
            "",
            "",
            "aliases are not used here: write the value out again");
        put(new Marked.Told(where(event)));
      }
      default -> {}
    }
  }

  private Marked scalar(ScalarEvent s) {
    Where where = where(s);
    if (s.getValue().length() <= LONGEST) {
      return new Marked.Scalar(s.getValue(), s.isPlain(), where);
    }
    problems.add(
        where, s.getValue(), "at most " + LONGEST + " letters", "", "this text is too long");
    return new Marked.Told(where);
  }

  private void startDocument(Event event) {
    if (++documents > 1) {
      problems.add(
          where(event),
          "---",
          "one document",
          "",
          "a file holds one house; a second document starts here");
      throw new Refused("", "");
    }
  }

  private void startCollection(CollectionStartEvent event) {
    refuseExtras(event, event.getTag());
    if (open.size() >= DEEPEST) {
      problems.add(
          where(event),
          "",
          "at most " + DEEPEST + " levels",
          "",
          "the file is nested too deeply here; no house file needs that");
      throw new Refused("", "");
    }
    open.push(new Open(event.getEventId() == Event.ID.MappingStart, where(event)));
  }

  private void refuseExtras(NodeEvent event, Optional<String> tag) {
    event
        .getAnchor()
        .ifPresent(
            a ->
                problems.add(
                    where(event),
                    "&" + a.getValue(),
                    "",
                    "",
                    "anchors are not used here: write the value out each time"));
    tag.ifPresent(
        t -> problems.add(where(event), t, "", "", "tags are not used here: leave it out"));
  }

  private void put(Marked value) {
    Open in = open.peek();
    if (in == null) {
      root = value;
    } else if (!in.isMap) {
      in.items.add(value);
    } else if (in.key == null) {
      startKey(in, value);
    } else {
      if (!in.skipsValue) {
        in.values.put(in.key.text(), value);
      }
      in.key = null;
    }
  }

  private void startKey(Open in, Marked value) {
    in.skipsValue = true;
    if (!(value instanceof Marked.Scalar key)) {
      in.key = new Marked.Scalar("", true, value.where());
      problems.add(value.where(), value.show(), "a word", "", "a key must be a plain word");
      return;
    }
    in.key = key;
    if (key.text().equals("<<")) {
      problems.add(key.where(), "<<", "", "", "merge keys are not used here: write the keys out");
      return;
    }
    Where first = in.keys.putIfAbsent(key.text(), key.where());
    in.skipsValue = first != null;
    if (first != null) {
      problems.add(
          key.where(),
          key.text(),
          "each key once",
          "",
          "the key '" + key.text() + "' is written twice; the first is on line " + first.line());
    }
  }

  private Where start() {
    return new Where(file, 1, 1);
  }

  private Where where(Event event) {
    return event.getStartMark().map(this::where).orElse(start());
  }

  private Where where(Mark mark) {
    return new Where(file, mark.getLine() + 1, mark.getColumn() + 1);
  }

  private static String lineOf(String text, Where at) {
    return text.lines().skip(Math.max(0, at.line() - 1)).findFirst().orElse("").strip();
  }
}
