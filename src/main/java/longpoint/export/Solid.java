package longpoint.export;

import java.util.List;
import java.util.Objects;
import longpoint.drawing.Layer;
import longpoint.geometry.Point3;
import longpoint.units.LengthUnit;

/**
 * Things in space, of flat faces and of lines.
 *
 * @param unit of every coordinate; z is up
 */
public record Solid(String title, LengthUnit unit, List<Body> bodies) {
  /** What a body is made of, as far as its colour goes. */
  public enum Finish {
    ROOF(0.55, 0.33, 0.24),
    WALL(0.87, 0.85, 0.80),
    FASCIA(0.96, 0.95, 0.93),
    TIMBER(0.78, 0.60, 0.36);

    private final double red;
    private final double green;
    private final double blue;

    Finish(double red, double green, double blue) {
      this.red = red;
      this.green = green;
      this.blue = blue;
    }

    /** Linear red, green and blue, 0 to 1. */
    List<Double> colour() {
      return List.of(red, green, blue);
    }
  }

  /** A straight line in space. */
  public record Line(Point3 from, Point3 to) {}

  /**
   * A flat face.
   *
   * @param rings the outer one first, counter-clockwise seen from outside; then its holes
   */
  public record Face(List<List<Point3>> rings) {
    public Face {
      rings = rings.stream().map(List::copyOf).toList();
    }
  }

  /**
   * One thing that can be picked and hidden by itself.
   *
   * @param layer what it belongs to, such as the walls
   */
  public record Body(String name, Layer layer, Finish finish, List<Face> faces, List<Line> lines) {
    public Body {
      Objects.requireNonNull(name);
      Objects.requireNonNull(layer);
      Objects.requireNonNull(finish);
      faces = List.copyOf(faces);
      lines = List.copyOf(lines);
    }
  }

  public Solid {
    Objects.requireNonNull(title);
    Objects.requireNonNull(unit);
    bodies = List.copyOf(bodies);
  }
}
