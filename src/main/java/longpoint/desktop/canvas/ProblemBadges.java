package longpoint.desktop.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.UIManager;
import longpoint.drawing.Box;
import longpoint.drawing.Ink;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;

/**
 * Signs on the sheet at the places where something is wrong: one for each place, shaped by the
 * worst of its problems. What belongs to no place has its sign in the corner of the sheet.
 */
public final class ProblemBadges {
  private static final double RADIUS = 9;

  /** How far a sign stands off from its wall or corner, in pixels. */
  private static final double OFF = 16;

  /**
   * All problems of one place.
   *
   * @param where id of a part or side, or {@code plan}
   * @param problems worst first, at least one
   * @param at the place on the plan; empty for the corner of the sheet
   * @param out which way the sign stands off, one unit long or zero
   */
  public record Badge(String where, List<Problem> problems, Optional<Point> at, Point out) {
    public Badge {
      problems = List.copyOf(problems);
    }

    Problem.Level worst() {
      return problems.get(0).level();
    }
  }

  private List<Badge> badges = List.of();

  /** Places along a wall that are tried for a sign, off its middle, where the handle is. */
  private static final double[] ALONG = {0.75, 0.25, 0.88, 0.12, 0.62, 0.38};

  /**
   * What stands around the signs.
   *
   * @param lettering boxes that signs keep off where they can
   * @param unitsPerPixel plan units to a pixel of the screen
   */
  public record Around(List<Box> lettering, double unitsPerPixel) {
    /** Nothing. */
    public static final Around NOTHING = new Around(List.of(), 1);

    private boolean isFree(Point at, Point out) {
      Point sign = at.plus(out.times(OFF * unitsPerPixel));
      double room = RADIUS * unitsPerPixel;
      return lettering.stream().noneMatch(b -> b.grown(room).contains(sign));
    }
  }

  /** Shows the problems of a plan, those of the same place together. */
  public void show(Plan plan, List<Problem> problems, Around around) {
    Map<String, List<Problem>> places = new LinkedHashMap<>();
    problems.stream()
        .sorted(Comparator.comparing(Problem::level))
        .forEach(p -> places.computeIfAbsent(spot(plan, p), w -> new ArrayList<>()).add(p));
    List<Badge> all = new ArrayList<>();
    places.values().forEach(at -> all.add(badge(plan, where(plan, at.get(0)), at, around)));
    badges = List.copyOf(all);
  }

  /** In the order of the worst first. */
  public List<Badge> all() {
    return badges;
  }

  private static String where(Plan plan, Problem problem) {
    boolean known =
        plan.parts().stream()
            .anyMatch(
                p ->
                    p.id().equals(problem.where())
                        || problem.where().startsWith(p.id() + "/")
                            && side(p, problem.where()).isPresent());
    return known ? problem.where() : "plan";
  }

  private static Optional<Integer> side(Part part, String where) {
    for (int i = 0; i < part.sideCount(); i++) {
      if (Side.id(part.id(), i).equals(where)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** What has one sign: the place a problem names, else its part or side. */
  private static String spot(Plan plan, Problem problem) {
    return where(plan, problem) + problem.at().map(p -> " " + p).orElse("");
  }

  private static Badge badge(Plan plan, String where, List<Problem> problems, Around around) {
    Optional<Point> named = problems.get(0).at();
    if (named.isPresent()) {
      return new Badge(where, problems, named, new Point(-1, 1).unit());
    }
    for (Part part : plan.parts()) {
      if (part.id().equals(where)) {
        // The upper left corner: names and slopes fill the middle.
        Point corner =
            part.outline().points().stream()
                .max(Comparator.comparingDouble(p -> p.y() - p.x()))
                .orElseThrow();
        return new Badge(where, problems, Optional.of(corner), new Point(-1, 1).unit());
      }
      Optional<Integer> side = side(part, where);
      if (side.isPresent()) {
        Segment wall = part.side(side.get());
        // Inside the wall, as dimensions stand outside.
        Point out = wall.length() > 0 ? wall.direction().left() : new Point(0, 0);
        return new Badge(where, problems, Optional.of(beside(wall, out, around)), out);
      }
    }
    return new Badge(where, problems, Optional.empty(), new Point(0, 0));
  }

  private static Point beside(Segment wall, Point out, Around around) {
    return Arrays.stream(ALONG)
        .mapToObj(share -> wall.from().toward(wall.to(), share))
        .filter(at -> around.isFree(at, out))
        .findFirst()
        .orElseGet(() -> wall.from().toward(wall.to(), ALONG[0]));
  }

  /** The sign of a problem that is shown. */
  public Optional<Badge> of(Problem problem) {
    return badges.stream().filter(b -> b.problems().contains(problem)).findFirst();
  }

  /** The sign under a place of the screen. */
  public Optional<Badge> under(View view, double x, double y) {
    return badges.stream()
        .filter(b -> Math.hypot(x(b, view) - x, y(b, view) - y) <= RADIUS + 3)
        .findFirst();
  }

  /** Where a sign stands on the screen. */
  public java.awt.Point place(Badge badge, View view) {
    return new java.awt.Point((int) x(badge, view), (int) y(badge, view));
  }

  private static double x(Badge badge, View view) {
    return badge.at().map(p -> view.x(p) + OFF * badge.out().x()).orElse(GridPainter.RULER + OFF);
  }

  private static double y(Badge badge, View view) {
    return badge.at().map(p -> view.y(p) - OFF * badge.out().y()).orElse(GridPainter.RULER + OFF);
  }

  /** Paints the signs, the worst on top. */
  public void paint(Graphics2D g, View view, CanvasColours colours, Font font) {
    for (int i = badges.size() - 1; i >= 0; i--) {
      paint(badges.get(i), g, view, colours, font);
    }
  }

  private static void paint(
      Badge badge, Graphics2D g, View view, CanvasColours colours, Font font) {
    double x = x(badge, view);
    double y = y(badge, view);
    boolean note = badge.worst() == Problem.Level.NOTE;
    Color ink =
        switch (badge.worst()) {
          case ERROR -> UIManager.getColor("Longpoint.error");
          case WARNING -> UIManager.getColor("Longpoint.warning");
          case NOTE -> colours.of(Ink.QUIET);
        };
    Shape shape =
        badge.worst() == Problem.Level.WARNING
            ? triangle(x, y)
            : new Ellipse2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS);
    g.setColor(note ? colours.ground() : ink);
    g.fill(shape);
    g.setColor(note ? ink : colours.ground());
    g.setStroke(new BasicStroke(1.6f));
    g.draw(shape);
    String sign =
        switch (badge.worst()) {
          case ERROR -> "×";
          case WARNING -> "!";
          case NOTE -> "i";
        };
    g.setFont(font.deriveFont(Font.BOLD));
    FontMetrics metrics = g.getFontMetrics();
    float down = badge.worst() == Problem.Level.WARNING ? 2 : 0;
    g.drawString(
        sign,
        (float) (x - metrics.stringWidth(sign) / 2.0),
        (float) (y + metrics.getAscent() / 2.0 - 2 + down));
  }

  private static Path2D triangle(double x, double y) {
    double r = RADIUS + 2;
    Path2D shape = new Path2D.Double();
    shape.moveTo(x, y - r);
    shape.lineTo(x + r, y + r * 0.8);
    shape.lineTo(x - r, y + r * 0.8);
    shape.closePath();
    return shape;
  }
}
