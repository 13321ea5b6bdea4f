package longpoint.editor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;

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

  /** A place the pointer may be held at; its words are made only if it is. */
  private record Hold(Point at, Snap.Kind kind, Supplier<String> reason, List<Segment> guides) {
    Hold(Point at, Snap.Kind kind, Supplier<String> reason) {
      this(at, kind, reason, List.of());
    }

    Snap snap() {
      return new Snap(at, kind, reason.get(), guides);
    }
  }

  private final Plan plan;
  private final Aim aim;
  private final Settings settings;
  private final Set<Snap.Kind> on;
  private final List<Target> targets;

  private Snapper(Plan plan, Settings settings, Aim aim) {
    this.plan = plan;
    this.aim = aim;
    this.settings = settings;
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
        .map(Hold::snap)
        .orElseGet(() -> Snap.free(pointed()));
  }

  private Point pointed() {
    return aim.pointer().at();
  }

  private Stream<Hold> corners() {
    return targets.stream()
        .filter(Target::ends)
        .map(t -> new Hold(t.wall().from(), Snap.Kind.CORNER, t.corner()))
        .filter(this::within);
  }

  private Stream<Hold> middles() {
    return targets.stream()
        .filter(Target::whole)
        .map(t -> new Hold(t.wall().middle(), Snap.Kind.MIDDLE, about("snap.middle", t)))
        .filter(this::within);
  }

  private Stream<Hold> onWalls() {
    return targets.stream()
        .filter(Target::whole)
        .filter(t -> t.wall().distance(pointed()) <= aim.pointer().reach())
        .map(t -> new Hold(onWall(t.wall()), Snap.Kind.ON_SIDE, about("snap.on", t)));
  }

  private static Supplier<String> about(String key, Target target) {
    return () -> Messages.text(key, target.name().get());
  }

  /** The foot on a wall, in whole steps from the wall's nearer end. */
  private Point onWall(Segment wall) {
    double length = wall.length();
    double along = Math.max(0, Math.min(length, wall.along(pointed())));
    boolean fromStart = along <= length / 2;
    double rounded = Math.min(length, rounded(fromStart ? along : length - along));
    return fromStart
        ? wall.from().plus(wall.direction().times(rounded))
        : wall.to().minus(wall.direction().times(rounded));
  }

  /** Lines that may hold the pointer. */
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

  /** Crossings of those lines with each other. */
  private Stream<Hold> crossings(List<Guide> lines) {
    List<Hold> found = new ArrayList<>();
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

  /** Two lines that both hold the pointer may cross a little beyond reach. */
  private boolean near(Point at, Guide a, Guide b) {
    double off = Math.max(a.distance(pointed()), b.distance(pointed()));
    return at.distance(pointed()) <= CROSSING_REACH * Math.max(aim.pointer().reach(), off);
  }

  private static Hold crossing(Point at, Guide a, Guide b) {
    List<Segment> shown = new ArrayList<>(a.shownTo(at));
    shown.addAll(b.shownTo(at));
    return new Hold(at, Snap.Kind.CROSSING, () -> both(a.reason().get(), b.reason().get()), shown);
  }

  private static String both(String one, String other) {
    return one.equals(other) ? one : Messages.text("snap.both", one, other);
  }

  private Optional<Hold> onLine(List<Guide> lines, Snap.Kind kind) {
    return lines.stream()
        .filter(g -> g.kind() == kind)
        .min(Comparator.comparingDouble(g -> g.distance(pointed())))
        .map(
            g -> {
              Point at = g.foot(pointed(), step());
              return new Hold(at, kind, g.reason(), g.shownTo(at));
            });
  }

  private Optional<Hold> grid() {
    if (step() == 0) {
      return Optional.empty();
    }
    Point origin = aim.origin().orElse(new Point(0, 0));
    Point off = pointed().minus(origin);
    Point at = origin.plus(new Point(rounded(off.x()), rounded(off.y())));
    Supplier<String> reason =
        () ->
            aim.origin().isPresent()
                ? Messages.text("snap.steps", Naming.length(plan, step()))
                : Messages.text("snap.grid");
    return Optional.of(new Hold(at, Snap.Kind.GRID, reason));
  }

  private double step() {
    return on.contains(Snap.Kind.GRID) ? settings.grid() : 0;
  }

  private double rounded(double length) {
    return step() == 0 ? length : Math.rint(length / step()) * step();
  }

  private Optional<Hold> nearest(Stream<Hold> holds) {
    return holds
        .filter(h -> on.contains(h.kind()))
        .min(Comparator.comparingDouble(h -> h.at().distance(pointed())));
  }

  private boolean within(Hold hold) {
    return hold.at().distance(pointed()) <= aim.pointer().reach();
  }
}
