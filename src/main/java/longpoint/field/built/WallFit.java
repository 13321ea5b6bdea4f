package longpoint.field.built;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.field.built.Network.Settled;
import longpoint.field.built.Network.Tie;
import longpoint.geometry.Point;
import longpoint.plan.AsBuilt;
import longpoint.plan.AsBuilt.Tape;
import longpoint.plan.CornerNumber;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension.Corner;

/**
 * Where the corners stand, by the tapes.
 *
 * <p>Steps: corners that share a place become one point; tapes become lengths between points, a
 * corner against another part's wall is tied to it; {@link Network} settles them; a reading that
 * does not fit is named, left out, and the rest settled again ({@link Doubt}).
 */
final class WallFit {
  /**
   * The share of a reading's accuracy that grows with its length: 0.2 mm to the metre, as tapes of
   * class II may be off (OIML R 35, from memory).
   */
  static final double PER_LENGTH = 0.0002;

  /** How much firmer than a tape a corner is tied to the wall it stands against. */
  private static final double FIRM = 50;

  /** Corners and walls nearer than this many tape accuracies are drawn at one place. */
  private static final double ONE_PLACE = 2;

  final Plan plan;
  final AsBuilt readings;
  final double accuracy;

  /** For every corner that is part of it, its point. */
  final Map<Corner, Integer> points = new LinkedHashMap<>();

  private final List<Point> meant = new ArrayList<>();
  private Point origin = new Point(0, 0);

  /** Tapes that count and lie between two corners of the plan, in order. */
  final List<Tape> tapes = new ArrayList<>();

  private final List<Tie> walls = new ArrayList<>();

  private WallFit(Plan plan) {
    this.plan = plan;
    this.readings = plan.onSite().walls();
    this.accuracy = readings.accuracy().orElse(AsBuilt.usualAccuracy(plan.unit()));
  }

  /** The points and ties; not settled yet. Without a tape that counts there are none. */
  static WallFit of(Plan plan) {
    WallFit fit = new WallFit(plan);
    fit.gather();
    fit.againstWalls();
    return fit;
  }

  private void gather() {
    for (Tape tape : readings.tapes()) {
      Optional<Point> from = tape.from().at(plan);
      Optional<Point> to = tape.to().at(plan);
      boolean lies = from.isPresent() && to.isPresent() && from.get().distance(to.get()) > 0;
      if (tape.use() == AsBuilt.Use.COUNTS && lies) {
        if (meant.isEmpty()) {
          origin = from.get();
        }
        if (point(tape.from()) != point(tape.to())) {
          tapes.add(tape);
        }
      }
    }
    // Whatever is drawn at one of these places goes along.
    if (!meant.isEmpty()) {
      for (Corner corner : CornerNumber.all(plan)) {
        place(corner).ifPresent(i -> points.putIfAbsent(corner, i));
      }
    }
  }

  private int point(Corner corner) {
    return points.computeIfAbsent(
        corner,
        c ->
            place(c)
                .orElseGet(
                    () -> {
                      meant.add(c.at(plan).orElseThrow().minus(origin));
                      return meant.size() - 1;
                    }));
  }

  private Optional<Integer> place(Corner corner) {
    Point at = corner.at(plan).orElseThrow().minus(origin);
    for (int i = 0; i < meant.size(); i++) {
      if (meant.get(i).distance(at) <= ONE_PLACE * accuracy) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** A wing's corner against the wall of the house goes where that wall goes. */
  private void againstWalls() {
    if (meant.isEmpty()) {
      return;
    }
    for (Corner corner : CornerNumber.all(plan)) {
      for (Wall wall : Wall.all(plan)) {
        Integer from = points.get(wall.from());
        Integer to = points.get(wall.to());
        if (from != null && to != null && !wall.part().equals(corner.part())) {
          against(corner, wall, from, to);
        }
      }
    }
  }

  private void against(Corner corner, Wall wall, int from, int to) {
    Point at = corner.at(plan).orElseThrow();
    double length = wall.line().length();
    if (length == 0) {
      return;
    }
    double along = wall.line().along(at);
    double margin = ONE_PLACE * accuracy;
    boolean on = Math.abs(wall.line().offset(at)) <= margin;
    if (on && along > margin && along < length - margin) {
      int point = point(corner);
      if (point != from && point != to) {
        walls.add(new Network.OnLine(point, from, to, accuracy / FIRM));
      }
    }
  }

  boolean isEmpty() {
    return tapes.isEmpty();
  }

  /** One standard deviation of a tape. */
  double sigma(Tape tape) {
    return Math.hypot(accuracy, PER_LENGTH * tape.reads());
  }

  /**
   * @param used tapes to go by; they come first among the ties, in this order
   */
  Settled settle(List<Tape> used) {
    List<Tie> ties = new ArrayList<>();
    for (Tape t : used) {
      ties.add(new Network.Length(points.get(t.from()), points.get(t.to()), t.reads(), sigma(t)));
    }
    ties.addAll(walls);
    return Network.settle(meant, ties);
  }

  /** Where every corner stands. */
  Map<Corner, Point> corners(Settled settled) {
    Map<Corner, Point> corners = new LinkedHashMap<>();
    points.forEach((corner, i) -> corners.put(corner, settled.at().get(i).plus(origin)));
    return corners;
  }

  /** How far two corners are apart on the plan. */
  double planned(Tape tape) {
    return tape.from().at(plan).orElseThrow().distance(tape.to().at(plan).orElseThrow());
  }
}
