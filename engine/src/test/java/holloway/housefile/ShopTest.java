package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.PinOut;
import holloway.request.Request;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The words of a house file that change what is bought and how it is wired, not where it goes. */
class ShopTest {
  private static final String PRICES =
      """
      prices: an invented shop
      currency: USD
      items: { fire-sealant: 12.50 }
      """;

  @TempDir Path dir;

  @Test
  void pinsAreAUnlessTheFileSaysB() throws IOException {
    assertEquals(PinOut.A, new Written(dir).sound().request().shop().pinOut());
    Request b = new Written(dir).plus("pin-out: b\n").sound().request();
    assertEquals(PinOut.B, b.shop().pinOut());
    assertEquals("white/orange", b.shop().pinOut().pins().get(0));
  }

  @Test
  void thePinOutIsOneSmallLetter() throws IOException {
    new Written(dir).plus("pin-out: T568B\n").assertProblemAt("T568B", "a", "b");
  }

  @Test
  void aPriceFileBesideTheHouseIsReadAndFingerprinted() throws IOException {
    var sound =
        new Written(dir)
            .plus("prices: shop.yaml\n")
            .beside("shop.yaml", PRICES.replace("items: { fire-sealant: 12.50 }\n", ""))
            .sound();
    assertEquals("an invented shop", sound.request().prices().name());
    assertEquals(Optional.of("shop.yaml"), sound.request().shop().priceFile());
    assertEquals(
        List.of("toy.yaml", "shop.yaml"),
        sound.house().inputs().stream().map(i -> i.file()).toList());
    String again = HouseWriter.house(sound.house(), sound.request(), Optional.empty());
    assertTrue(again.contains("prices: shop.yaml"), again);
  }

  @Test
  void faultsOfThePriceFileAreFaultsOfTheHouse() throws IOException {
    List<Problem> all =
        new Written(dir)
            .plus("prices: shop.yaml\n")
            .beside("shop.yaml", PRICES.replace("currency: USD", "currency: dollars"))
            .problems();
    assertTrue(all.stream().anyMatch(p -> p.where().file().equals("shop.yaml")), all::toString);
  }

  @Test
  void aPriceFileThatIsNotThereIsNamed() throws IOException {
    assertTrue(
        new Written(dir).plus("prices: shop.yaml\n").problem().toString().contains("shop.yaml"));
  }
}
