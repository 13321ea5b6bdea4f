package longpoint.editor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/**
 * Says where a pointer is taken to be, and why. Strongest first: a corner, the middle of a wall,
 * the crossing of two lines, a wall, in line with a wall or corner, square to a wall, the grid.
 * Within a kind the nearest counts, and nothing beyond reach; only the grid holds everywhere.
 *
 * <p>Alt lets go of all of it; Shift lets go of square guidance. The answer depends on the plan and
 * the pointer alone, not on where the pointer came from.
 */
public final class Snapper {
  /**
   * Sine of 3°: a line pulled within 3° of square is meant to be square. Wide enough to draw by
   * hand at any zoom, narrow enough to leave a plain 1 in 12 skew (4.8°) alone.
   */
  private static final double SQUARE_HOLD = 0.0523;

  /**
   * Two lines at a right angle that are both within reach cross within √2 of it; lines at 45°
   * within 2.6. Half again takes in the first and keeps shallow crossings from pulling the pointer
   * far off.
   */
  private static final double CROSSING_REACH = 1.5;

  private final Aim aim;
  private final Settings settings;
  private final LengthUnit unit;
  private final Set<Snap.Kind> on;
  private final List<Target> targets;

  private Snapper(Plan plan, Settings settings, Aim aim) {
    this.aim = aim;
    this.settings = settings;
    this.unit = plan.unit();
    this.on = kindsOn(settings, aim.pointer());
    this.targets = Target.of(plan, aim);
  }

  public static Snap snap(Plan plan, Settings settings, Aim aim) {
    return new Snapper(plan, settings, aim).strongest();
  }

  private static Set<Snap.Kind> kindsOn(Settings settings, Pointer pointer) {
    Set<Snap.Kind> on = EnumSet.noneOf(Snap.Kind.class);
    if (!pointer.holds(Modifier.ALT)) {
      on.addAll(settings.snaps());
    }
    if (pointer.holds(Modifier.SHIFT)) {
      on.remove(Snap.Kind.SQUARE);
    }
    return on;
  }

  private Snap strongest() {
    List<Guide> lines = lines();
    return nearest(corners())
        .or(() -> nearest(middles()))
        .or(() -> nearest(crossings(lines)))
        .or(() -> nearest(onWalls()))
        .or(() -> onLine(lines, Snap.Kind.IN_LINE))
        .or(() -> onLine(lines, Snap.Kind.SQUARE))
        .or(this::grid)
        .orElseGet(() -> Snap.free(pointed()));
  }

  private Point pointed() {
    return aim.pointer().at();
  }

  private Stream<Snap> corners() {
    if (!on.contains(Snap.Kind.CORNER)) {
      return Stream.empty();
    }
    return targets.stream()
        .filter(Target::ends)
        .map(t -> point(t.wall().from(), Snap.Kind.CORNER, t.corner()))
        .filter(s -> within(s.at(), aim.pointer().reach()));
  }

  private Stream<Snap> middles() {
    if (!on.contains(Snap.Kind.MIDDLE)) {
      return Stream.empty();
    }
    return targets.stream()
        .filter(Target::whole)
        .map(
            t -> point(t.wall().middle(), Snap.Kind.MIDDLE, Messages.text("snap.middle", t.name())))
        .filter(s -> within(s.at(), aim.pointer().reach()));
  }

  private Stream<Snap> onWalls() {
    if (!on.contains(Snap.Kind.ON_SIDE)) {
      return Stream.empty();
    }
    return targets.stream()
        .filter(Target::whole)
        .filter(t -> t.wall().distance(pointed()) <= aim.pointer().reach())
        .map(t -> point(onWall(t.wall()), Snap.Kind.ON_SIDE, Messages.text("snap.on", t.name())));
  }

  /** The foot on a wall, in whole steps from the wall's nearer end. */
  private Point onWall(Segment wall) {
    double length = wall.length();
    double along = Math.max(0, Math.min(length, wall.along(pointed())));
    boolean fromStart = along <= length / 2;
    double rounded = rounded(fromStart ? along : length - along);
    return fromStart
        ? wall.from().plus(wall.direction().times(Math.min(rounded, length)))
        : wall.to().minus(wall.direction().times(Math.min(rounded, length)));
  }

  /** Lines within reach that may hold the pointer. */
  private List<Guide> lines() {
    List<Guide> lines = new ArrayList<>();
    if (on.contains(Snap.Kind.IN_LINE)) {
      lines.addAll(Guide.inLine(targets));
    }
    if (on.contains(Snap.Kind.SQUARE)) {
      aim.anchor().ifPresent(anchor -> lines.addAll(Guide.square(anchor, targets)));
    }
    lines.removeIf(g -> !holds(g));
    return lines;
  }

  private boolean holds(Guide guide) {
    double off = guide.distance(pointed());
    double pulled = guide.through().distance(pointed());
    return off <= aim.pointer().reach()
        || guide.kind() == Snap.Kind.SQUARE && off <= SQUARE_HOLD * pulled;
  }

  /** Crossings of those lines with each other and with walls. */
  private Stream<Snap> crossings(List<Guide> lines) {
    if (!on.contains(Snap.Kind.CROSSING)) {
      return Stream.empty();
    }
    List<Snap> found = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      for (int k = i + 1; k < lines.size(); k++) {
        Guide a = lines.get(i);
        Guide b = lines.get(k);
        if (!a.through().equals(b.through())) {
          a.crossing(b).filter(at -> near(at, a, b)).ifPresent(at -> found.add(crossing(at, a, b)));
        }
      }
    }
    return found.stream();
  }

  private static Snap crossing(Point at, Guide a, Guide b) {
    List<Segment> shown = new ArrayList<>(a.shownTo(at));
    shown.addAll(b.shownTo(at));
    String reason =
        a.reason().equals(b.reason())
            ? a.reason()
            : Messages.text("snap.both", a.reason(), b.reason());
    return new Snap(at, Snap.Kind.CROSSING, reason, shown);
  }

  private Optional<Snap> onLine(List<Guide> lines, Snap.Kind kind) {
    return lines.stream()
        .filter(g -> g.kind() == kind)
        .min(Comparator.comparingDouble(g -> g.distance(pointed())))
        .map(
            g -> {
              Point at = g.foot(pointed(), step());
              return new Snap(at, kind, g.reason(), g.shownTo(at));
            });
  }

  private Optional<Snap> grid() {
    if (step() == 0) {
      return Optional.empty();
    }
    Point origin = aim.origin().orElse(new Point(0, 0));
    Point off = pointed().minus(origin);
    String reason =
        aim.origin().isPresent()
            ? Messages.text("snap.steps", LengthText.of(step(), unit))
            : Messages.text("snap.grid");
    return Optional.of(
        point(origin.plus(new Point(rounded(off.x()), rounded(off.y()))), Snap.Kind.GRID, reason));
  }

  private double step() {
    return on.contains(Snap.Kind.GRID) ? settings.grid() : 0;
  }

  private double rounded(double length) {
    return step() == 0 ? length : Math.rint(length / step()) * step();
  }

  private Optional<Snap> nearest(Stream<Snap> snaps) {
    return snaps.min(Comparator.comparingDouble(s -> s.at().distance(pointed())));
  }

  private boolean within(Point at, double reach) {
    return at.distance(pointed()) <= reach;
  }

  /** Two lines that both hold the pointer may cross a little beyond reach. */
  private boolean near(Point at, Guide a, Guide b) {
    double off = Math.max(a.distance(pointed()), b.distance(pointed()));
    return within(at, CROSSING_REACH * Math.max(aim.pointer().reach(), off));
  }

  private static Snap point(Point at, Snap.Kind kind, String reason) {
    return new Snap(at, kind, reason, List.of());
  }
}
