package longpoint.plan;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import longpoint.geometry.Point;

/**
 * A truss or girder that the user puts somewhere.
 *
 * @param at plan point: the truss stands at the station of this point in the run it lies in
 * @param to where a girder along the ridge ends, the other bearing being {@code at}; empty for a
 *     truss from wall to wall
 * @param kind what it is
 * @param plies how many trusses are fastened side by side, ≥ 1
 */
public record PlacedTruss(Point at, Optional<Point> to, Kind kind, int plies, Extras extras) {
  /** What the user puts. */
  public enum Kind {
    /** One more of the ordinary trusses there. */
    TRUSS,
    /** A truss that carries others. */
    GIRDER;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public PlacedTruss {
    Objects.requireNonNull(at);
    Objects.requireNonNull(to);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(extras);
  }

  public static PlacedTruss truss(Point at) {
    return new PlacedTruss(at, Optional.empty(), Kind.TRUSS, 1, Extras.NONE);
  }

  public static PlacedTruss girder(Point at, int plies) {
    return new PlacedTruss(at, Optional.empty(), Kind.GIRDER, plies, Extras.NONE);
  }

  /** A girder along the ridge, on which the trusses that it crosses are hung. */
  public static PlacedTruss girder(Point at, Point to, int plies) {
    return new PlacedTruss(at, Optional.of(to), Kind.GIRDER, plies, Extras.NONE);
  }

  PlacedTruss moved(Motion motion) {
    return new PlacedTruss(motion.on(at), to.map(motion::on), kind, plies, extras);
  }
}
