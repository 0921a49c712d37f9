package holloway.gl;

import static org.lwjgl.glfw.GLFW.*;

import holloway.look.Key;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Keys by what is printed on them, whatever the layout of the keyboard. */
final class Keys {
  private static final Map<Integer, Key> NAMED = new HashMap<>();

  static {
    NAMED.put(GLFW_KEY_LEFT, Key.LEFT);
    NAMED.put(GLFW_KEY_RIGHT, Key.RIGHT);
    NAMED.put(GLFW_KEY_UP, Key.UP);
    NAMED.put(GLFW_KEY_DOWN, Key.DOWN);
    NAMED.put(GLFW_KEY_PAGE_UP, Key.PAGE_UP);
    NAMED.put(GLFW_KEY_PAGE_DOWN, Key.PAGE_DOWN);
    NAMED.put(GLFW_KEY_HOME, Key.HOME);
    NAMED.put(GLFW_KEY_END, Key.END);
    NAMED.put(GLFW_KEY_ENTER, Key.ENTER);
    NAMED.put(GLFW_KEY_KP_ENTER, Key.ENTER);
    NAMED.put(GLFW_KEY_ESCAPE, Key.ESCAPE);
    NAMED.put(GLFW_KEY_TAB, Key.TAB);
    NAMED.put(GLFW_KEY_SPACE, Key.SPACE);
    NAMED.put(GLFW_KEY_BACKSPACE, Key.BACKSPACE);
    NAMED.put(GLFW_KEY_DELETE, Key.DELETE);
    NAMED.put(GLFW_KEY_KP_ADD, Key.PLUS);
    NAMED.put(GLFW_KEY_KP_SUBTRACT, Key.MINUS);
    NAMED.put(GLFW_KEY_F1, Key.F1);
  }

  private Keys() {}

  static Optional<Key> of(int key, int scancode) {
    Key named = NAMED.get(key);
    if (named != null) {
      return Optional.of(named);
    }
    String printed = glfwGetKeyName(key, scancode);
    return printed == null || printed.isEmpty() ? plain(key) : printed(printed.charAt(0), key);
  }

  private static Optional<Key> printed(char c, int key) {
    return switch (c) {
      case '+', '=' -> Optional.of(Key.PLUS);
      case '-' -> Optional.of(Key.MINUS);
      case ',' -> Optional.of(Key.COMMA);
      case '.' -> Optional.of(Key.PERIOD);
      case '/' -> Optional.of(Key.SLASH);
      default -> {
        Optional<Key> k = letter(Character.toUpperCase(c));
        yield k.isPresent() ? k : plain(key);
      }
    };
  }

  /** Where a keyboard prints another alphabet, the place of the key counts. */
  private static Optional<Key> plain(int key) {
    return switch (key) {
      case GLFW_KEY_EQUAL -> Optional.of(Key.PLUS);
      case GLFW_KEY_MINUS -> Optional.of(Key.MINUS);
      case GLFW_KEY_COMMA -> Optional.of(Key.COMMA);
      case GLFW_KEY_PERIOD -> Optional.of(Key.PERIOD);
      case GLFW_KEY_SLASH -> Optional.of(Key.SLASH);
      default -> key < 128 ? letter((char) key) : Optional.empty();
    };
  }

  private static Optional<Key> letter(char c) {
    if (c >= 'A' && c <= 'Z') {
      return Optional.of(Key.valueOf(String.valueOf(c)));
    }
    return c >= '0' && c <= '9' ? Optional.of(Key.valueOf("DIGIT_" + c)) : Optional.empty();
  }
}
