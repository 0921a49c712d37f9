package holloway.look;

/**
 * A finished picture.
 *
 * @param rgb red, green and blue of each pixel, upper row first
 */
public record Pixels(int width, int height, byte[] rgb) {
  public Pixels {
    if (rgb.length != width * height * 3) {
      throw new IllegalArgumentException(
          rgb.length + " bytes for " + width + " x " + height + " pixels");
    }
  }

  /** 0xRRGGBB. */
  public int at(int x, int y) {
    int i = (y * width + x) * 3;
    return (rgb[i] & 255) << 16 | (rgb[i + 1] & 255) << 8 | rgb[i + 2] & 255;
  }
}
