package longpoint.field.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import longpoint.geometry.Point;
import longpoint.plan.AsBuilt;
import longpoint.plan.AsBuilt.PlateReading;
import longpoint.plan.CornerNumber;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;

/** Plate heights part by part: highest, lowest, the plane through them, twist and shims. */
final class Plates {
  /**
   * Half an inch over a whole foundation, as a handbook of construction tolerances is quoted in a
   * builders' journal (seen there); a plate is no better than what it stands on.
   */
  private static final double ALLOWED_MM = 12.7;

  /** Share of the longest singular value: corners nearer to one line than this have no plane. */
  private static final double IN_LINE = 1e-6;

  private Plates() {}

  static List<PlateLevel> of(Plan plan) {
    List<PlateLevel> levels = new ArrayList<>();
    for (Part part : plan.parts()) {
      List<PlateReading> read =
          plan.onSite().walls().plates().stream()
              .filter(p -> p.use() == AsBuilt.Use.COUNTS && p.at().part().equals(part.id()))
              .filter(p -> p.at().at(plan).isPresent())
              .toList();
      if (!read.isEmpty()) {
        levels.add(level(plan, part, read));
      }
    }
    return levels;
  }

  private static PlateLevel level(Plan plan, Part part, List<PlateReading> read) {
    double high = read.stream().mapToDouble(PlateReading::reads).max().orElseThrow();
    double low = read.stream().mapToDouble(PlateReading::reads).min().orElseThrow();
    double[] plane = plane(plan, read);
    Point middle = middle(plan, read);
    Map<Integer, PlateLevel.At> corners = new TreeMap<>();
    for (PlateReading p : read) {
      int number = CornerNumber.of(plan, p.at()).orElseThrow();
      Point at = p.at().at(plan).orElseThrow().minus(middle);
      double off = plane == null ? 0 : p.reads() - plane[0] - plane[1] * at.x() - plane[2] * at.y();
      corners.put(number, new PlateLevel.At(number, p.reads(), high - p.reads(), off));
    }
    LengthUnit unit = plan.unit();
    return new PlateLevel(
        part.id(),
        part.plateHeight(),
        high,
        low,
        List.copyOf(corners.values()),
        plane == null ? Optional.empty() : Optional.of(new PlateLevel.Tilt(plane[1], plane[2])),
        unit.fromMillimetres(ALLOWED_MM));
  }

  private static Point middle(Plan plan, List<PlateReading> read) {
    Point sum = new Point(0, 0);
    for (PlateReading p : read) {
      sum = sum.plus(p.at().at(plan).orElseThrow());
    }
    return sum.times(1.0 / read.size());
  }

  /** Height in the middle, slope across and slope up; null where the corners have no plane. */
  private static double[] plane(Plan plan, List<PlateReading> read) {
    Point middle = middle(plan, read);
    double extent = 1;
    for (PlateReading p : read) {
      extent = Math.max(extent, p.at().at(plan).orElseThrow().distance(middle));
    }
    double[][] rows = new double[read.size()][];
    for (int i = 0; i < rows.length; i++) {
      Point at = read.get(i).at().at(plan).orElseThrow().minus(middle).times(1 / extent);
      rows[i] = new double[] {1, at.x(), at.y()};
    }
    Svd svd = new Svd(rows, 3);
    double longest = Math.max(svd.s[0], Math.max(svd.s[1], svd.s[2]));
    double[] plane = new double[3];
    for (int k = 0; k < 3; k++) {
      if (svd.s[k] < IN_LINE * longest) {
        return null;
      }
      double by = 0;
      for (int i = 0; i < rows.length; i++) {
        by += svd.u[k][i] * read.get(i).reads();
      }
      for (int j = 0; j < 3; j++) {
        plane[j] += by / svd.s[k] * svd.v[k][j] / (j == 0 ? 1 : extent);
      }
    }
    return plane;
  }
}
