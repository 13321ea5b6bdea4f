package longpoint.field.loads;

import java.util.Objects;
import longpoint.geometry.Point;

/**
 * What one end of a member, or a gable end on its wall, brings to where the framing ends.
 *
 * @param member id of the truss, or the rafter's mark with the number of its place
 * @param mark on the layout
 * @param on what it stands on
 * @param subject id of that wall, of the rafter line, or of the part
 * @param at plan point; for a line its middle of gravity
 * @param area ground nearest to it, square plan units; these tile the roof
 * @param reaction by statics
 * @param carries how many other members hang on the member
 */
public record BearingLoad(
    String member,
    String mark,
    On on,
    String subject,
    Point at,
    double area,
    Amount reaction,
    int carries) {
  /** What something stands on. */
  public enum On {
    /** A wall, at one place. */
    WALL,
    /** A gable wall, all along. */
    GABLE_WALL,
    /** Another member: a girder, a hip. */
    MEMBER,
    /** A ridge, a ledger or a post: the designer says what carries it. */
    RIDGE,
    /** The roof beneath. */
    ROOF,
    /** No wall is drawn there. */
    NO_WALL,
    /** Roof whose framing is not laid out: it stands already, or has none. */
    NOT_FRAMED
  }

  public BearingLoad {
    Objects.requireNonNull(member);
    Objects.requireNonNull(mark);
    Objects.requireNonNull(on);
    Objects.requireNonNull(subject);
    Objects.requireNonNull(at);
    Objects.requireNonNull(reaction);
  }
}
