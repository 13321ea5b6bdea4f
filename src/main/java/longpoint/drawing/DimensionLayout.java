package longpoint.drawing;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * Where the strokes and the figure of a dimension go, in the units the mark stands in; every output
 * draws from here, so a dimension looks the same on screen, on paper and in a CAD program.
 *
 * <p>Extension lines start a little off what they measure and run a little past the dimension line;
 * slanted strokes mark its ends, as is common practice on building drawings. The figure stands
 * above the line and reads from below or from the right (ISO 129-1, from memory).
 *
 * @param extensions from the measured points to the line; none when the line stands on the points
 * @param line the dimension line, in the direction of the mark
 * @param ticks a slanted stroke at each end
 * @param text the figure
 */
public record DimensionLayout(
    List<Segment> extensions, Segment line, List<Segment> ticks, Mark.Text text) {
  /** Lengths on paper, millimetres. */
  public static final double GAP = 1.5;

  public static final double PAST = 2;
  public static final double TICK = 2.5;
  public static final double TEXT_HEIGHT = Lettering.SMALL;
  public static final double TEXT_GAP = 1;

  /**
   * Directions within this many degrees of straight down count as down, so that the figure of an
   * upright wall reads from the right even when rounding turned the wall by a hair. A wall turned
   * by less than a tenth of a degree is upright to any eye.
   */
  private static final double UPRIGHT = 0.1;

  public DimensionLayout {
    extensions = List.copyOf(extensions);
    ticks = List.copyOf(ticks);
  }

  /**
   * Lays out a dimension.
   *
   * @param unitsPerMm units of the drawing to a millimetre of paper, &gt; 0
   */
  public static DimensionLayout of(Mark.Dimension mark, double unitsPerMm) {
    Point along = mark.to().minus(mark.from()).unit();
    Point off = along.left().times(mark.offsetMm() * unitsPerMm);
    Segment line = new Segment(mark.from().plus(off), mark.to().plus(off));
    List<Segment> extensions = new ArrayList<>();
    double side = Math.signum(mark.offsetMm());
    if (Math.abs(mark.offsetMm()) > GAP) {
      Point start = along.left().times(side * GAP * unitsPerMm);
      Point past = along.left().times(side * PAST * unitsPerMm);
      extensions.add(new Segment(mark.from().plus(start), line.from().plus(past)));
      extensions.add(new Segment(mark.to().plus(start), line.to().plus(past)));
    }
    double degrees = readable(Math.toDegrees(Math.atan2(along.y(), along.x())));
    List<Segment> ticks =
        List.of(
            tick(line.from(), degrees + 45, unitsPerMm), tick(line.to(), degrees + 45, unitsPerMm));
    Point up = direction(degrees).left().times(TEXT_GAP * unitsPerMm);
    Point at = line.middle().plus(along.times(mark.slideMm() * unitsPerMm)).plus(up);
    Mark.Text text =
        new Mark.Text(
            at, mark.text(), TEXT_HEIGHT, degrees, Anchor.MIDDLE, mark.layer(), mark.subject());
    return new DimensionLayout(extensions, line, ticks, text);
  }

  /** The same line turned, if need be, to read from below or from the right: −90 &lt; … ≤ 90. */
  public static double readable(double degrees) {
    double turned = degrees;
    while (turned <= -90 + UPRIGHT) {
      turned += 180;
    }
    while (turned > 90 + UPRIGHT) {
      turned -= 180;
    }
    return turned;
  }

  /** Every stroke. */
  public List<Segment> strokes() {
    List<Segment> all = new ArrayList<>(extensions);
    all.add(line);
    all.addAll(ticks);
    return all;
  }

  private static Segment tick(Point at, double degrees, double unitsPerMm) {
    Point half = direction(degrees).times(TICK / 2 * unitsPerMm);
    return new Segment(at.minus(half), at.plus(half));
  }

  private static Point direction(double degrees) {
    return new Point(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)));
  }
}
