package longpoint.sheets;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/** Walls, planes and lines of a roof as marks, without lettering. */
final class RoofMarks {
  /**
   * A hidden edge nearer than this to a roof line is that line, drawn already. The roof's own
   * figures agree to a millionth; half a millimetre of the building is a fiftieth of a pen's width
   * on paper. Millimetres of the building.
   */
  private static final double SAME_MM = 0.5;

  private RoofMarks() {}

  /** A tint for every visible piece of a plane; its subject is the plane. */
  static List<Mark> tints(RoofSurface surface) {
    List<Mark> marks = new ArrayList<>();
    for (RoofPlane plane : surface.planes()) {
      for (Region region : plane.visible()) {
        marks.add(new Mark.Fill(region, Layers.TINT, plane.id()));
      }
    }
    return marks;
  }

  /** A line for every side of every wall outline; its subject is the side. */
  static List<Mark> walls(Plan plan) {
    List<Mark> marks = new ArrayList<>();
    for (Part part : plan.parts()) {
      for (Side side : plan.sides(part)) {
        marks.add(
            Mark.Path.line(
                side.wall().from(),
                side.wall().to(),
                part.existing() ? Layers.WALL_EXISTING : Layers.WALL,
                side.id()));
      }
    }
    return marks;
  }

  /**
   * The roof lines as seen from above, by kind in the order of the layers; the subject is the line.
   */
  static List<Mark> lines(RoofSurface surface) {
    List<Mark> marks = new ArrayList<>();
    for (RoofLine line : surface.lines()) {
      for (Segment seen : surface.seen(line)) {
        if (!seen.from().equals(seen.to())) {
          marks.add(Mark.Path.line(seen.from(), seen.to(), Layers.of(line.kind()), line.id()));
        }
      }
    }
    return marks;
  }

  /** Edges of what lies beneath another roof, each once; the subject is the hidden plane. */
  static List<Mark> covered(Plan plan, RoofSurface surface) {
    double same = plan.unit().fromMillimetres(SAME_MM);
    List<Segment> drawn = surface.lines().stream().flatMap(l -> surface.seen(l).stream()).toList();
    Set<Set<List<Long>>> seen = new LinkedHashSet<>();
    List<Mark> marks = new ArrayList<>();
    for (RoofPlane plane : surface.planes()) {
      for (Segment side : plane.covered().stream().flatMap(r -> sides(r).stream()).toList()) {
        boolean fresh = seen.add(Set.of(cell(side.from(), same), cell(side.to(), same)));
        if (fresh && side.length() > same && drawn.stream().noneMatch(d -> on(d, side, same))) {
          marks.add(Mark.Path.line(side.from(), side.to(), Layers.COVERED, plane.id()));
        }
      }
    }
    return marks;
  }

  private static boolean on(Segment line, Segment side, double same) {
    return line.distance(side.from()) < same && line.distance(side.to()) < same;
  }

  private static List<Long> cell(Point p, double same) {
    return List.of(Math.round(p.x() / same), Math.round(p.y() / same));
  }

  private static List<Segment> sides(Region region) {
    List<Ring> rings = new ArrayList<>(List.of(region.shell()));
    rings.addAll(region.holes());
    List<Segment> sides = new ArrayList<>();
    for (Ring ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        sides.add(ring.side(i));
      }
    }
    return sides;
  }
}
