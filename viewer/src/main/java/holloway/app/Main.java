package holloway.app;

/** The main program of the jar: hands the command line to the engine's verbs. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.out.println("holloway");
  }
}
