package longpoint.drawing;

import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;

/**
 * Hands marks on to an output as they stand where a group was placed: coordinates and radii scale
 * and turn, pens and lettering keep their size on paper. Groups inside are handed on with their
 * placement worked in, so an output opens a group and sends its marks through here again.
 *
 * @param placement where the marks' own coordinates land
 * @param output that takes them
 */
public record Placed(Placement placement, MarkVisitor output) implements MarkVisitor {
  /** Sends the marks of a group to an output in the coordinates the group itself stands in. */
  public static void marksOf(Mark.Group group, MarkVisitor output) {
    Placed placed = new Placed(group.placement(), output);
    group.marks().forEach(m -> m.accept(placed));
  }

  @Override
  public void path(Mark.Path p) {
    output.path(new Mark.Path(moved(p.points()), p.closed(), p.layer(), p.subject()));
  }

  @Override
  public void arc(Mark.Arc a) {
    output.arc(
        new Mark.Arc(
            placement.apply(a.centre()),
            a.radius() * placement.scale(),
            a.startDegrees() + placement.degrees(),
            a.sweepDegrees(),
            a.layer(),
            a.subject()));
  }

  @Override
  public void text(Mark.Text t) {
    output.text(
        new Mark.Text(
            placement.apply(t.at()),
            t.text(),
            t.heightMm(),
            t.degrees() + placement.degrees(),
            t.anchor(),
            t.layer(),
            t.subject()));
  }

  @Override
  public void dimension(Mark.Dimension d) {
    output.dimension(
        new Mark.Dimension(
            placement.apply(d.from()),
            placement.apply(d.to()),
            d.offsetMm(),
            d.slideMm(),
            d.text(),
            d.layer(),
            d.subject()));
  }

  @Override
  public void fill(Mark.Fill f) {
    List<Ring> holes = f.region().holes().stream().map(this::moved).toList();
    output.fill(
        new Mark.Fill(new Region(moved(f.region().shell()), holes), f.layer(), f.subject()));
  }

  @Override
  public void group(Mark.Group g) {
    output.group(new Mark.Group(g.name(), g.placement().within(placement), g.marks()));
  }

  private List<Point> moved(List<Point> points) {
    return points.stream().map(placement::apply).toList();
  }

  private Ring moved(Ring ring) {
    return new Ring(moved(ring.points()));
  }
}
