package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.PriceList;
import holloway.catalog.ShopItem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PriceFileTest {
  @TempDir Path folder;

  private PriceFile.Answer read(String text) throws Exception {
    return PriceFile.read(Files.writeString(folder.resolve("prices.yaml"), text));
  }

  private String fault(String text) throws Exception {
    PriceFile.Answer answer = read(text);
    assertTrue(answer.list().isEmpty());
    assertEquals(1, answer.problems().size(), answer.problems().toString());
    return answer.problems().get(0).toString();
  }

  @Test
  void lengthsAndPrices() throws Exception {
    PriceList list =
        read("""
             prices: mine
             currency: EUR
             boxes: { cat6: { 1000 ft: 180, 100 m: 61.5 } }
             by-the-metre: { cat6: 1.40, cat6a: 2 }
             leads: { om4: { 10 m: 19 } }
             items: { plate-2: 1.90 }
             """)
            .list()
            .orElseThrow();
    // 1000 ft = 304.8 m, taken as 304 m; cents.
    assertEquals(
        List.of(
            new PriceList.Piece(100, OptionalLong.of(6150)),
            new PriceList.Piece(304, OptionalLong.of(18000))),
        list.boxesOf("cat6"));
    assertEquals(OptionalLong.of(140), list.cutOf("cat6"));
    assertEquals(OptionalLong.empty(), list.cutOf("rg6"));
    assertEquals(List.of(), list.boxesOf("cat6a"), "by the metre alone");
    assertEquals(200, list.metreOf("cat6a").orElseThrow());
    assertEquals(OptionalLong.of(1900), list.leadPrice("om4", 10));
    assertEquals(OptionalLong.of(190), list.priceOf(ShopItem.PLATE_2));
    assertEquals(3, list.boxesOf("rg6").size(), "what the file does not name stays as it was");
  }

  @Test
  void aNewcomersMistakes() throws Exception {
    String head = "prices: mine\ncurrency: EUR\n";
    assertTrue(fault(head + "item: {}\n").contains("did you mean 'items'"));
    assertTrue(fault(head + "items: { plate2: 3 }\n").contains("plate-2"));
    assertTrue(fault(head + "items: { plate-2: 3 EUR }\n").contains("12 or 7.50"));
    assertTrue(fault(head + "items: { plate-2: 0 }\n").contains("above 0"));
    assertTrue(fault(head + "by-the-metre: { om4: 3 }\n").contains("no such cable"));
    assertTrue(fault(head + "by-the-metre: { cat6: 0 }\n").contains("above 0"));
    assertTrue(fault(head + "boxes: { om4: { 100 m: 3 } }\n").contains("no such cable"));
    assertTrue(fault(head + "leads: { om4: { 10: 3 } }\n").contains("305 m, or 1000 ft"));
    assertTrue(fault("prices: mine\n").contains("lacks 'currency'"));
    assertTrue(fault("prices: mine\ncurrency: euro\n").contains("three letters"));
  }

  @Test
  void theSampleIsRead() {
    PriceFile.Answer sample = PriceFile.read(Path.of("../samples/prices/example.yaml"));
    assertEquals(List.of(), sample.problems());
    // Rounded down: 500 ft is 152.4 m, taken as 152 m.
    assertEquals(152, sample.list().orElseThrow().boxesOf("cat6").get(1).metres());
  }
}
