package longpoint.plan;

import java.util.Objects;
import java.util.Optional;
import longpoint.units.Slope;

/**
 * One side of a part's outline as the user set it. What is left empty follows the plan's {@link
 * Defaults}.
 *
 * @param kind what the roof does here
 * @param slope of an eave's plane; carries no meaning on other kinds
 * @param overhang wall face to tail (eave) or to the rake (gable), level, in plan units, ≥ 0
 * @param heel top of plate to top of truss or rafter at the outside wall face, plumb, plan units
 * @param inLine whether an eave's plane goes on where it comes into line with a parallel wall's of
 *     another slope; left empty, the one with the longer wall line does
 */
public record Edge(
    EdgeKind kind,
    Optional<Slope> slope,
    Optional<Double> overhang,
    Optional<Double> heel,
    Optional<InLine> inLine,
    Extras extras) {
  public Edge {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(slope);
    Objects.requireNonNull(overhang);
    Objects.requireNonNull(heel);
    Objects.requireNonNull(inLine);
    Objects.requireNonNull(extras);
  }

  public static Edge of(EdgeKind kind) {
    return new Edge(
        kind, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Extras.NONE);
  }

  public static Edge eave(Slope slope) {
    return of(EdgeKind.EAVE).withSlope(slope);
  }

  public Edge withKind(EdgeKind kind) {
    return new Edge(kind, slope, overhang, heel, inLine, extras);
  }

  public Edge withSlope(Slope slope) {
    return new Edge(kind, Optional.of(slope), overhang, heel, inLine, extras);
  }

  public Edge withOverhang(double overhang) {
    return new Edge(kind, slope, Optional.of(overhang), heel, inLine, extras);
  }

  public Edge withHeel(double heel) {
    return new Edge(kind, slope, overhang, Optional.of(heel), inLine, extras);
  }

  public Edge withInLine(Optional<InLine> inLine) {
    return new Edge(kind, slope, overhang, heel, inLine, extras);
  }
}
