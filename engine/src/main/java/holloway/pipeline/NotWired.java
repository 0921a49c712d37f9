package holloway.pipeline;

/** A stage that this build does not have. */
final class NotWired extends IllegalStateException {
  private static final long serialVersionUID = 1;

  NotWired(String stage) {
    super("this build has no " + stage);
  }
}
