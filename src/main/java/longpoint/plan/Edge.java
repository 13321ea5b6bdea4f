package longpoint.plan;

import java.util.Locale;
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
 * @param hip how an eave at the end of a run of trusses is framed; empty for step-down trusses
 * @param start where the sheets of an eave's plane begin; empty follows the part's deck
 * @param firstCourse width of the lowest course of sheets of an eave's plane; empty follows the
 *     part's deck
 */
public record Edge(
    EdgeKind kind,
    Optional<Slope> slope,
    Optional<Double> overhang,
    Optional<Double> heel,
    Optional<InLine> inLine,
    Optional<HipEnd> hip,
    Optional<Deck.Start> start,
    Optional<Double> firstCourse,
    Extras extras) {
  /** How the end of a run is framed where the roof slopes down to it. */
  public enum HipEnd {
    /** A hip girder, jacks before it, and flat-topped trusses behind it. */
    STEPDOWN,
    /** Hip rafters, jacks and commons up to a girder at the end of the ridge. */
    RAFTERS,
    /** Nothing: the trusses stop at the end of the ridge. */
    NONE;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Edge {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(slope);
    Objects.requireNonNull(overhang);
    Objects.requireNonNull(heel);
    Objects.requireNonNull(inLine);
    Objects.requireNonNull(hip);
    Objects.requireNonNull(start);
    Objects.requireNonNull(firstCourse);
    Objects.requireNonNull(extras);
  }

  /** A side whose sheets begin where its part's do. */
  public Edge(
      EdgeKind kind,
      Optional<Slope> slope,
      Optional<Double> overhang,
      Optional<Double> heel,
      Optional<InLine> inLine,
      Optional<HipEnd> hip,
      Extras extras) {
    this(kind, slope, overhang, heel, inLine, hip, Optional.empty(), Optional.empty(), extras);
  }

  /** An edge that says no more than its figures. */
  public Edge(
      EdgeKind kind,
      Optional<Slope> slope,
      Optional<Double> overhang,
      Optional<Double> heel,
      Extras extras) {
    this(kind, slope, overhang, heel, Optional.empty(), Optional.empty(), extras);
  }

  /** An edge that says nothing about a hip. */
  public Edge(
      EdgeKind kind,
      Optional<Slope> slope,
      Optional<Double> overhang,
      Optional<Double> heel,
      Optional<InLine> inLine,
      Extras extras) {
    this(kind, slope, overhang, heel, inLine, Optional.empty(), extras);
  }

  public static Edge of(EdgeKind kind) {
    return new Edge(
        kind, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Extras.NONE);
  }

  public static Edge eave(Slope slope) {
    return of(EdgeKind.EAVE).withSlope(slope);
  }

  public Edge withKind(EdgeKind kind) {
    return new Edge(kind, slope, overhang, heel, inLine, hip, start, firstCourse, extras);
  }

  public Edge withSlope(Slope slope) {
    return new Edge(
        kind, Optional.of(slope), overhang, heel, inLine, hip, start, firstCourse, extras);
  }

  public Edge withOverhang(double overhang) {
    return new Edge(
        kind, slope, Optional.of(overhang), heel, inLine, hip, start, firstCourse, extras);
  }

  public Edge withHeel(double heel) {
    return new Edge(
        kind, slope, overhang, Optional.of(heel), inLine, hip, start, firstCourse, extras);
  }

  public Edge withHip(HipEnd hip) {
    return new Edge(
        kind, slope, overhang, heel, inLine, Optional.of(hip), start, firstCourse, extras);
  }

  /** Following the plan's default where empty. */
  public Edge withSlope(Optional<Slope> slope) {
    return new Edge(kind, slope, overhang, heel, inLine, hip, start, firstCourse, extras);
  }

  /** Following the plan's default where empty. */
  public Edge withOverhang(Optional<Double> overhang) {
    return new Edge(kind, slope, overhang, heel, inLine, hip, start, firstCourse, extras);
  }

  /** Following the plan's default where empty. */
  public Edge withHeel(Optional<Double> heel) {
    return new Edge(kind, slope, overhang, heel, inLine, hip, start, firstCourse, extras);
  }

  public Edge withInLine(Optional<InLine> inLine) {
    return new Edge(kind, slope, overhang, heel, inLine, hip, start, firstCourse, extras);
  }

  /** Following the part's deck where empty. */
  public Edge withStart(Optional<Deck.Start> start) {
    return new Edge(kind, slope, overhang, heel, inLine, hip, start, firstCourse, extras);
  }

  /** Following the part's deck where empty. */
  public Edge withFirstCourse(Optional<Double> width) {
    return new Edge(kind, slope, overhang, heel, inLine, hip, start, width, extras);
  }
}
