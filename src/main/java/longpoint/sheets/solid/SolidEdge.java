package longpoint.sheets.solid;

import java.util.Objects;
import longpoint.drawing.Ink;
import longpoint.geometry.Point3;

/**
 * A straight line of the house in space.
 *
 * @param kind what it belongs to
 * @param subject id of what it shows: a roof line, a side, a truss, the mark of a rafter, or a
 *     piece of sheathing
 * @param ink its colour by meaning
 */
public record SolidEdge(Kind kind, String subject, Ink ink, Point3 from, Point3 to) {
  /** What an edge belongs to. */
  public enum Kind {
    /** Ridge, hip, valley, eave and the like. */
    ROOF,
    /** Lower edge of a fascia. */
    FASCIA,
    /** Corner or foot of a wall. */
    WALL,
    /** Chord of a truss, or a rafter. */
    CHORD,
    /** Web of a truss: shape only, not engineered. */
    WEB,
    /** Edge of a piece of sheathing. */
    SHEET
  }

  public SolidEdge {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(subject);
    Objects.requireNonNull(ink);
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
  }
}
