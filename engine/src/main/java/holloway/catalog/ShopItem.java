package holloway.catalog;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What is bought besides cable and leads. The key in a price file is the name in small letters with
 * hyphens; sizes and their sources stand where things are counted.
 */
public enum ShopItem {
  RING_SINGLE(Shelf.OUTLETS, "low-voltage bracket for a finished wall, single gang"),
  RING_DOUBLE(Shelf.OUTLETS, "low-voltage bracket for a finished wall, double gang"),
  RING_SHALLOW(Shelf.OUTLETS, "shallow low-voltage bracket, for a thin wall"),
  BOX_MASONRY(Shelf.OUTLETS, "box to set into masonry"),
  BOX_SURFACE(Shelf.OUTLETS, "box to screw onto the wall"),
  BOX_OUTSIDE(Shelf.OUTLETS, "weatherproof box for outside"),
  PLATE_1(Shelf.OUTLETS, "keystone plate, single gang, 1 port"),
  PLATE_2(Shelf.OUTLETS, "keystone plate, single gang, 2 ports"),
  PLATE_3(Shelf.OUTLETS, "keystone plate, single gang, 3 ports"),
  PLATE_4(Shelf.OUTLETS, "keystone plate, single gang, 4 ports"),
  PLATE_6(Shelf.OUTLETS, "keystone plate, single gang, 6 ports"),
  PLATE_12(Shelf.OUTLETS, "keystone plate, double gang, 12 ports"),
  BLANK(Shelf.OUTLETS, "blank insert for an empty port"),
  JACK_CAT5E(Shelf.JACKS, "keystone jack, cat5e"),
  JACK_CAT6(Shelf.JACKS, "keystone jack, cat6"),
  JACK_CAT6A(Shelf.JACKS, "keystone jack, cat6a"),
  COUPLER_FIBRE(Shelf.JACKS, "keystone coupler for duplex fibre, multimode"),
  COUPLER_FIBRE_SINGLE(Shelf.JACKS, "keystone coupler for duplex fibre, single-mode"),
  COUPLER_COAX(Shelf.JACKS, "keystone coupler, F type"),
  PLUG_COAX(Shelf.JACKS, "F plug for coaxial cable"),
  PLUG_FIELD(Shelf.JACKS, "field-fitted plug for four-pair cable"),
  PANEL_12(Shelf.CABINET, "patch panel, 12 ports"),
  PANEL_24(Shelf.CABINET, "patch panel, 24 ports"),
  PANEL_48(Shelf.CABINET, "patch panel, 48 ports"),
  CORD_1FT(Shelf.CABINET, "patch cord, 0.3 m (1 ft)"),
  CORD_3FT(Shelf.CABINET, "patch cord, 0.9 m (3 ft)"),
  CORD_5FT(Shelf.CABINET, "patch cord, 1.5 m (5 ft)"),
  CORD_10FT(Shelf.CABINET, "patch cord, 3 m (10 ft), at the outlets"),
  CORD_FIBRE(Shelf.CABINET, "fibre cord, multimode, 3 m (10 ft), at the outlets"),
  CORD_FIBRE_SINGLE(Shelf.CABINET, "fibre cord, single-mode, 3 m (10 ft), at the outlets"),
  CORD_COAX(Shelf.CABINET, "coaxial cord, 3 m (10 ft), at the outlets"),
  TIE(Shelf.FIXING, "hook-and-loop tie"),
  SUPPORT(Shelf.FIXING, "cable support (J-hook or strap)"),
  CLIP(Shelf.FIXING, "cable clip"),
  TRUNKING_METRE(Shelf.FIXING, "surface trunking"),
  STRING_METRE(Shelf.FIXING, "pull string, left in the way"),
  DUCT_METRE(Shelf.FIXING, "plastic duct, for between buildings"),
  DUCT_JOINT(Shelf.FIXING, "joint for that duct"),
  DUCT_BEND(Shelf.FIXING, "long bend for that duct"),
  DUCT_BOX(Shelf.FIXING, "pull box to set into the ground, with a lid"),
  DUCT_PLUG(Shelf.FIXING, "plug that closes the end of a duct round its cables"),
  TAPE_METRE(Shelf.FIXING, "warning tape, over what is buried"),
  SPAN_METRE(Shelf.FIXING, "steel wire for an overhead span"),
  SPAN_END(Shelf.FIXING, "wall eye with strainer, for that wire"),
  SURGE(Shelf.FIXING, "surge protector for a four-pair or coaxial line"),
  NAIL_PLATE(Shelf.FIXING, "steel nail plate, 1.6 mm"),
  PATCH_KIT(Shelf.FIXING, "board, battens, screws, tape and filler to close a patch"),
  SEALANT(Shelf.SEALING, "fire-block sealant, cartridge of 300 ml"),
  SEALANT_OUTDOOR(Shelf.SEALING, "silicone sealant for outside walls, cartridge of 300 ml"),
  BIT_PILOT(Shelf.TOOLS, "bit of 3 mm (1/8 in) and a stiff wire, for pilots"),
  BIT_PILOT_MASONRY(
      Shelf.TOOLS, "masonry bit of 6 mm (1/4 in), longer than the wall is thick, for pilots"),
  BIT_13(Shelf.TOOLS, "wood bit, 13 mm (1/2 in)"),
  BIT_16(Shelf.TOOLS, "wood bit, 16 mm (5/8 in)"),
  BIT_19(Shelf.TOOLS, "wood bit, 19 mm (3/4 in)"),
  BIT_22(Shelf.TOOLS, "wood bit, 22 mm (7/8 in)"),
  BIT_25(Shelf.TOOLS, "wood bit, 25 mm (1 in)"),
  BIT_32(Shelf.TOOLS, "wood bit, 32 mm (1-1/4 in)"),
  BIT_38(Shelf.TOOLS, "wood bit, 38 mm (1-1/2 in)"),
  BIT_51(Shelf.TOOLS, "wood bit, 51 mm (2 in)"),
  BIT_MASONRY(Shelf.TOOLS, "masonry bit"),
  BIT_LONG(Shelf.TOOLS, "long bit, 455 mm (18 in), or an extension"),
  BIT_FLEX(Shelf.TOOLS, "flexible-shaft bit, 1.83 m (72 in)"),
  DRILL_ANGLE(Shelf.TOOLS, "right-angle drill, or an attachment, and short bits"),
  SAW(Shelf.TOOLS, "hand saw for board"),
  FISH_RODS(Shelf.TOOLS, "fish rods with hook and magnet"),
  PUNCH_DOWN(Shelf.TOOLS, "tool to terminate jacks and panels"),
  TESTER(Shelf.TOOLS, "cable tester that shows each wire"),
  LADDER(Shelf.TOOLS, "ladder"),
  STEP_LADDER(Shelf.TOOLS, "step ladder"),
  GLASSES(Shelf.PROTECTION, "safety glasses"),
  GLOVES(Shelf.PROTECTION, "work gloves, pair"),
  RESPIRATOR(Shelf.PROTECTION, "respirator, particle filter"),
  COVERALL(Shelf.PROTECTION, "disposable coverall"),
  KNEE_PADS(Shelf.PROTECTION, "knee pads, pair"),
  PLANKS(Shelf.PROTECTION, "planks to lie across the joists");

  /** Where in the shop it stands. */
  public enum Shelf {
    CABLE("cable"),
    OUTLETS("boxes and plates"),
    JACKS("jacks and couplers"),
    CABINET("cabinet"),
    FIXING("fixing"),
    SEALING("sealing"),
    TOOLS("tools, if you have none"),
    PROTECTION("protection");

    private final String words;

    Shelf(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  private final Shelf shelf;
  private final String words;

  ShopItem(Shelf shelf, String words) {
    this.shelf = shelf;
    this.words = words;
  }

  public Shelf shelf() {
    return shelf;
  }

  public String words() {
    return words;
  }

  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<ShopItem> find(String key) {
    return Arrays.stream(values()).filter(i -> i.key().equals(key)).findFirst();
  }

  public static List<String> keys() {
    return Arrays.stream(values()).map(ShopItem::key).toList();
  }
}
