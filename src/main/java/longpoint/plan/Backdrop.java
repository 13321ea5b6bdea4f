package longpoint.plan;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;

/**
 * A picture that lies beneath the plan to be traced: a survey, a sketch, an old drawing. It is seen
 * in the window only and never goes on paper.
 *
 * @param name of the file it came from
 * @param at where its lower left corner lies
 * @param scale plan units to a pixel, &gt; 0
 * @param degrees how far it is turned about that corner, counter-clockwise
 * @param strength how much of it shows, above 0 (not at all) to 1 (in full)
 */
public record Backdrop(
    String name,
    EncodedImage image,
    Point at,
    double scale,
    double degrees,
    double strength,
    State state,
    Extras extras) {
  /** What may be done with the picture. */
  public enum State {
    /** Picked and moved like everything else. */
    LOOSE,
    /** Shown, and passed over by the pointer. */
    LOCKED,
    HIDDEN;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Backdrop {
    Objects.requireNonNull(name);
    Objects.requireNonNull(image);
    Objects.requireNonNull(at);
    Objects.requireNonNull(state);
    Objects.requireNonNull(extras);
    if (!(scale > 0) || Double.isInfinite(scale)) {
      throw new IllegalArgumentException("a picture needs a scale above 0, not " + scale);
    }
    if (!Double.isFinite(degrees)) {
      throw new IllegalArgumentException("a picture cannot be turned by " + degrees);
    }
    if (!(strength > 0 && strength <= 1)) {
      throw new IllegalArgumentException("strength is above 0 and at most 1, not " + strength);
    }
  }

  public double width() {
    return image.width() * scale;
  }

  public double height() {
    return image.height() * scale;
  }

  /** Its corners, counter-clockwise from the lower left one. */
  public List<Point> corners() {
    Point across = Motion.turn(new Point(0, 0), degrees).on(new Point(width(), 0));
    Point up = Motion.turn(new Point(0, 0), degrees).on(new Point(0, height()));
    return List.of(at, at.plus(across), at.plus(across).plus(up), at.plus(up));
  }

  public Bounds bounds() {
    return Bounds.of(corners());
  }

  public boolean covers(Point p) {
    Point own = Motion.turn(at, -degrees).on(p).minus(at);
    return own.x() >= 0 && own.x() <= width() && own.y() >= 0 && own.y() <= height();
  }

  public Backdrop moved(Point by) {
    return new Backdrop(name, image, at.plus(by), scale, degrees, strength, state, extras);
  }

  /**
   * Larger or smaller, a point of it staying where it is.
   *
   * @param factor &gt; 0
   */
  public Backdrop scaled(Point about, double factor) {
    return new Backdrop(
        name,
        image,
        about.plus(at.minus(about).times(factor)),
        scale * factor,
        degrees,
        strength,
        state,
        extras);
  }

  /** Turned counter-clockwise, a point of it staying where it is. */
  public Backdrop turned(Point about, double by) {
    double whole = (degrees + by) % 360;
    return new Backdrop(
        name,
        image,
        Motion.turn(about, by).on(at),
        scale,
        whole < 0 ? whole + 360 : whole,
        strength,
        state,
        extras);
  }

  public Backdrop withStrength(double strength) {
    return new Backdrop(name, image, at, scale, degrees, strength, state, extras);
  }

  public Backdrop withState(State state) {
    return new Backdrop(name, image, at, scale, degrees, strength, state, extras);
  }
}
