package longpoint.editor;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import longpoint.plan.EdgeKind;
import longpoint.plan.Reshape;
import longpoint.units.LengthUnit;

/**
 * How the user likes to draw.
 *
 * @param grid positions and lengths round to this step where nothing else holds them, plan units; 0
 *     for none
 * @param snaps kinds that are on
 * @param edgeKind what the edge kind tool sets; empty goes round the kinds
 * @param neighbours what the walls beside a dragged wall do; Shift while dragging turns it over
 * @param givesWay which end of a wall moves when its length is typed
 */
public record Settings(
    double grid,
    Set<Snap.Kind> snaps,
    Optional<EdgeKind> edgeKind,
    Reshape.Neighbours neighbours,
    GivesWay givesWay) {
  public Settings {
    snaps = Set.copyOf(snaps);
    Objects.requireNonNull(edgeKind);
    Objects.requireNonNull(neighbours);
    Objects.requireNonNull(givesWay);
    if (!(grid >= 0) || Double.isInfinite(grid)) {
      throw new IllegalArgumentException("grid must be 0 or more and finite, not " + grid);
    }
  }

  public static Settings of(LengthUnit unit) {
    double grid = unit == LengthUnit.INCH ? 6 : 100;
    return new Settings(
        grid,
        Set.of(Snap.Kind.values()),
        Optional.empty(),
        Reshape.Neighbours.STRETCH,
        GivesWay.FINISH);
  }

  /** The same habits for a plan in another unit, with that unit's own grid. */
  Settings in(LengthUnit unit) {
    return withGrid(of(unit).grid);
  }

  public Settings withGrid(double grid) {
    return new Settings(grid, snaps, edgeKind, neighbours, givesWay);
  }

  public Settings withSnaps(Set<Snap.Kind> snaps) {
    return new Settings(grid, snaps, edgeKind, neighbours, givesWay);
  }

  public Settings withEdgeKind(Optional<EdgeKind> edgeKind) {
    return new Settings(grid, snaps, edgeKind, neighbours, givesWay);
  }

  public Settings withNeighbours(Reshape.Neighbours neighbours) {
    return new Settings(grid, snaps, edgeKind, neighbours, givesWay);
  }

  public Settings withGivesWay(GivesWay givesWay) {
    return new Settings(grid, snaps, edgeKind, neighbours, givesWay);
  }
}
