package longpoint.field.chalk;

import java.util.Locale;
import java.util.Objects;
import longpoint.geometry.Point;
import longpoint.wording.Worded;

/**
 * One line to snap.
 *
 * @param kind what it marks
 * @param label what to write beside it
 * @param from one end: x across from the sheet's datum, y up the slope from the fascia arris
 * @param to other end
 */
public record ChalkLine(Kind kind, Worded label, Point from, Point to) {
  /** What a line marks, in the order lines are snapped. */
  public enum Kind {
    /** Lower edge of a lookout, on the rake trusses. */
    LOOKOUT(Stage.FRAME),
    /** Upper edge of a course of sheets, on the bare trusses or rafters. */
    COURSE(Stage.FRAME),
    /** Under the ridge of an overlay. */
    CENTRE(Stage.DECK),
    /** Where the valley trusses' ends land. */
    SET(Stage.DECK),
    /** Face of a valley truss that touches the deck, the uphill one. */
    BEARING(Stage.DECK),
    /** One truss thickness below the bearing line: nails that stop the truss sliding. */
    STOP(Stage.DECK),
    /** Where the overlay's own sheets end. */
    SHEET(Stage.DECK);

    private final Stage stage;

    Kind(Stage stage) {
      this.stage = stage;
    }

    /** What the line is snapped on. */
    public Stage stage() {
      return stage;
    }

    /** As it stands in the figures. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** What is there to snap on. */
  public enum Stage {
    /** Bare trusses or rafters: v is taped from the outer top edge of the fascia. */
    FRAME,
    /** The finished deck: v is taped from the deck's lower edge. */
    DECK
  }

  public ChalkLine {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(label);
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
  }

  /** √(Δu² + Δv²): a tape pulled from end to end must read this. */
  public double diagonal() {
    return from.distance(to);
  }
}
