package longpoint.plan;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/**
 * Moves whole parts without changing their size: x' = a·x + b·y + e, y' = c·x + d·y + f. Quarter
 * turns and shifts by whole figures are exact.
 */
public final class Motion {
  private final double a;
  private final double b;
  private final double c;
  private final double d;
  private final double e;
  private final double f;

  private Motion(double a, double b, double c, double d, double e, double f) {
    this.a = a;
    this.b = b;
    this.c = c;
    this.d = d;
    this.e = e;
    this.f = f;
  }

  public static Motion shift(Point by) {
    return new Motion(1, 0, 0, 1, by.x(), by.y());
  }

  /**
   * A turn about a point.
   *
   * @param degrees counter-clockwise, finite
   */
  public static Motion turn(Point about, double degrees) {
    double quarters = degrees / 90;
    double cos = StrictMath.cos(StrictMath.toRadians(degrees));
    double sin = StrictMath.sin(StrictMath.toRadians(degrees));
    if (quarters == Math.rint(quarters)) {
      cos = Math.rint(cos);
      sin = Math.rint(sin);
    }
    return about(about, cos, -sin, sin, cos);
  }

  /**
   * A mirror image.
   *
   * @param line the endless line it is mirrored in, from two different points
   */
  public static Motion mirror(Segment line) {
    Point u = line.direction();
    double cos = u.x() * u.x() - u.y() * u.y();
    double sin = 2 * u.x() * u.y();
    return about(line.from(), cos, sin, sin, -cos);
  }

  private static Motion about(Point o, double a, double b, double c, double d) {
    return new Motion(a, b, c, d, o.x() - a * o.x() - b * o.y(), o.y() - c * o.x() - d * o.y());
  }

  public Point on(Point p) {
    return new Point(a * p.x() + b * p.y() + e, c * p.x() + d * p.y() + f);
  }

  /**
   * The part moved. In a mirror image the sides run the other way round, so their numbers change;
   * each keeps its edge, and sheets laid from the left are laid from the right.
   */
  public Part on(Part part) {
    List<Edge> edges = new ArrayList<>(part.edges().size());
    List<Ring> rings = new ArrayList<>();
    int first = 0;
    for (Ring ring : part.rings()) {
      int count = ring.size();
      rings.add(on(ring));
      for (int i = 0; i < count; i++) {
        int from = mirrors() ? Math.floorMod(count - 2 - i, count) : i;
        edges.add(on(part.edges().get(first + from)));
      }
      first += count;
    }
    Part moved = part.withShape(rings.get(0), rings.subList(1, rings.size()), edges);
    moved = moved.withFrame(on(part.frame()));
    return mirrors()
        ? moved.withDeck(part.deck().withStart(part.deck().start().mirrored()))
        : moved;
  }

  private Edge on(Edge edge) {
    return mirrors() ? edge.withStart(edge.start().map(Deck.Start::mirrored)) : edge;
  }

  /** The places that the user gave go along. */
  private Frame on(Frame frame) {
    RunChoices runs = frame.choices().runs();
    RunChoices moved =
        new RunChoices(
            runs.layoutFrom().stream().map(this::on).toList(),
            runs.through().map(this::on),
            runs.legs());
    return frame
        .withChoices(frame.choices().withRuns(moved))
        .withPlacements(frame.placements().moved(this));
  }

  private Ring on(Ring ring) {
    Ring moved = new Ring(ring.points().stream().map(this::on).toList());
    return mirrors() ? moved.reversed() : moved;
  }

  boolean mirrors() {
    return a * d - b * c < 0;
  }
}
