package longpoint.framing.run;

import java.util.Objects;
import java.util.Optional;
import longpoint.plan.EdgeKind;
import longpoint.plan.Side;

/**
 * What a run ends on along one of its four sides.
 *
 * @param kind of the wall there; {@code OPEN} where it runs into another run
 * @param side the wall that decides, the longest where there are several; empty for the mouth
 *     between two runs of one part
 */
public record Bound(EdgeKind kind, Optional<Side> side) {
  /** No wall: the run opens into another run of the same part. */
  public static final Bound MOUTH = new Bound(EdgeKind.OPEN, Optional.empty());

  public Bound {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(side);
  }

  public static Bound of(Side side) {
    return new Bound(side.kind(), Optional.of(side));
  }

  public boolean isEave() {
    return kind == EdgeKind.EAVE;
  }

  /** Wall face to plumb-cut tail of an eave, or to the outside of a rake; nothing elsewhere. */
  public double overhang() {
    return switch (kind) {
      case EAVE, GABLE -> side.orElseThrow().overhang();
      case ABUTMENT, OPEN -> 0;
    };
  }
}
