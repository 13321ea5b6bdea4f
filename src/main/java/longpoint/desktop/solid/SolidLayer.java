package longpoint.desktop.solid;

import java.util.Set;
import longpoint.sheets.solid.SolidEdge;
import longpoint.sheets.solid.SolidFace;

/** What of the house can be shown or hidden. */
public enum SolidLayer {
  ROOF,
  WALLS,
  FRAME,
  /** Joints of the sheathing, on the roof. */
  DECK;

  /** What is shown to someone who has not chosen yet. */
  public static final Set<SolidLayer> AT_FIRST = Set.of(ROOF, WALLS);

  static SolidLayer of(SolidFace.Kind kind) {
    return switch (kind) {
      case ROOF, FASCIA -> ROOF;
      case WALL -> WALLS;
    };
  }

  static SolidLayer of(SolidEdge.Kind kind) {
    return switch (kind) {
      case ROOF, FASCIA -> ROOF;
      case WALL -> WALLS;
      case CHORD, WEB -> FRAME;
      case SHEET -> DECK;
    };
  }
}
