package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.plan.Join;
import longpoint.plan.Problem;
import longpoint.stop.CalledOff;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.util.AssertionFailedException;

/**
 * The roofs of all parts brought together: the ground cut into cells, what stands over each, and
 * the lines between.
 *
 * <p>Cutting the ground is the one step that rounding can upset. The ladder:
 *
 * <ol>
 *   <li>places nearer than the plan's grain are made one;
 *   <li>the same with a grain 4 and then 16 times as coarse, for lines that run all but together;
 *   <li>the same with a finer grain, for places that were wrongly made one;
 *   <li>the first of these that came to an end is used and its faults are reported.
 * </ol>
 *
 * @param faults what {@link RoofCheck} found; empty when all is well
 */
record Joining(
    Presence presence,
    List<RunOn> runsOn,
    List<Standing> standing,
    List<LineFinder.Stretch> lines,
    List<Problem> faults) {
  private static final double[] GRAINS = {1, 4, 16, 0.25};

  /** The joined roof, or nothing when no rung of the ladder holds. */
  static Optional<Joining> join(List<PartRoof> roofs, List<Join> joins, Grain grain) {
    Joining fallback = null;
    for (double factor : GRAINS) {
      CalledOff.check();
      Optional<Joining> attempt = attempt(roofs, joins, new Grain(grain.place() * factor));
      if (attempt.isPresent() && attempt.get().faults().isEmpty()) {
        return attempt;
      }
      if (fallback == null) {
        fallback = attempt.orElse(null);
      }
    }
    return Optional.ofNullable(fallback);
  }

  private static Optional<Joining> attempt(List<PartRoof> roofs, List<Join> joins, Grain grain) {
    try {
      Ground ground = Ground.of(lines(roofs, grain), grain.place());
      Presence presence = new Presence(ground, roofs, grain);
      List<RunOn> runsOn = RunOn.all(presence);
      List<Standing> standing = Covering.standing(presence, new Roles(roofs, joins), runsOn);
      List<LineFinder.Stretch> lines =
          LineMerger.merge(LineFinder.find(ground, standing, roofs, grain), grain);
      List<Problem> faults = RoofCheck.check(ground, standing, lines, roofs, grain);
      return Optional.of(new Joining(presence, runsOn, standing, lines, faults));
    } catch (TopologyException | AssertionFailedException lost) {
      return Optional.empty();
    }
  }

  /** Every line along which the roof over the ground may change. */
  private static List<LineString> lines(List<PartRoof> roofs, Grain grain) {
    List<LineString> lines = new ArrayList<>();
    for (PartRoof roof : roofs) {
      roof.pieces().forEach(p -> lines.addAll(rings(p.ground())));
      lines.addAll(rings(roof.own()));
      if (roofs.size() > 1) {
        lines.addAll(rings(roof.walls()));
      }
    }
    lines.addAll(Crossings.of(roofs, grain));
    return lines;
  }

  private static List<LineString> rings(Geometry geometry) {
    List<LineString> rings = new ArrayList<>();
    geometry.apply(new LinearComponentExtracter(rings));
    return rings;
  }
}
