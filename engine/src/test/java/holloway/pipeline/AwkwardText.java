package holloway.pipeline;

import holloway.support.AwkwardHouseText;

/** Prints the awkward house of a seed. */
public final class AwkwardText {
  private AwkwardText() {}

  public static void main(String[] args) {
    System.out.print(AwkwardHouseText.of(Long.parseLong(args[0])).house());
  }
}
