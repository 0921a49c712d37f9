package holloway.pipeline;

import holloway.pack.Pictures;

/** What draws a planned house; the engine alone has none. */
@FunctionalInterface
public interface PictureSource {
  PictureSource NONE = house -> Pictures.none("this program draws no pictures");

  /** To be closed by whoever asks, on the same thread. Never throws for want of a driver. */
  Pictures of(PlannedHouse house);
}
