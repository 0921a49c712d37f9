package holloway.cli;

import java.time.Duration;
import java.util.Optional;
import java.util.Stack;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.IParameterConsumer;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/** Options that say when to end a search; {@code 30 s} may be one word or two. */
final class Until {
  private static final Pattern SHARE = Pattern.compile("([0-9]{1,2}(?:\\.[0-9]{1,6})?) ?%");
  private static final Pattern TIME = Pattern.compile("([0-9]{1,5}) ?(s|min)");

  private Until() {}

  /** A part of a whole, 0 to below 1, out of per cents. */
  static final class Share implements ITypeConverter<Double> {
    @Override
    public Double convert(String words) {
      Matcher m = SHARE.matcher(words);
      if (!m.matches()) {
        throw new TypeConversionException("'%s' is not a share like 0.5%%".formatted(words));
      }
      return Double.parseDouble(m.group(1)) / 100;
    }
  }

  static Duration time(String words) {
    Matcher m = TIME.matcher(words);
    if (!m.matches()) {
      throw new TypeConversionException("'%s' is not a time like 30s or 2min".formatted(words));
    }
    long n = Long.parseLong(m.group(1));
    return m.group(2).equals("s") ? Duration.ofSeconds(n) : Duration.ofMinutes(n);
  }

  /** Takes the unit too where it stands apart. */
  static final class Time implements IParameterConsumer {
    @Override
    public void consumeParameters(Stack<String> args, ArgSpec arg, CommandSpec command) {
      if (args.isEmpty()) {
        throw new MissingParameterException(
            command.commandLine(), arg, "--at-most needs a time like 30s or 2min");
      }
      String words = args.pop();
      if (words.matches("[0-9]+") && !args.isEmpty() && args.peek().matches("s|min")) {
        words += args.pop();
      }
      try {
        arg.setValue(Optional.of(time(words)));
      } catch (TypeConversionException e) {
        throw new ParameterException(
            command.commandLine(), "--at-most: " + e.getMessage(), e, arg, words);
      }
    }
  }
}
