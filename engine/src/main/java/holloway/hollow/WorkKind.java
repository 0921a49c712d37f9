package holloway.hollow;

import java.util.Locale;

/** What is paid once. */
public enum WorkKind {
  BORE,
  PATCH,
  CUT_OUT,
  ZONE,
  ACCESS,
  CHANNEL;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
