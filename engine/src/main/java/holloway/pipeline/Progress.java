package holloway.pipeline;

/** Told, in a few words, what is being done now. */
public interface Progress {
  Progress SILENT = words -> {};

  void now(String words);
}
