package longpoint.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.plan.PlanDimension.Corner;

/** Corners as people number them: from 1 through the whole plan, as the wall sheet shows them. */
public final class CornerNumber {
  private CornerNumber() {}

  /**
   * @return from 1; empty when the plan has no such corner
   */
  public static Optional<Integer> of(Plan plan, Corner corner) {
    int before = 0;
    for (Part part : plan.parts()) {
      if (part.id().equals(corner.part())) {
        boolean there = corner.corner() >= 0 && corner.corner() < part.sideCount();
        return there ? Optional.of(before + corner.corner() + 1) : Optional.empty();
      }
      before += part.sideCount();
    }
    return Optional.empty();
  }

  /** The corner with a number; empty when there is none. */
  public static Optional<Corner> at(Plan plan, int number) {
    int before = 0;
    for (Part part : plan.parts()) {
      int corner = number - 1 - before;
      if (corner >= 0 && corner < part.sideCount()) {
        return Optional.of(new Corner(part.id(), corner));
      }
      before += part.sideCount();
    }
    return Optional.empty();
  }

  /** Every corner of a plan in the order of their numbers. */
  public static List<Corner> all(Plan plan) {
    List<Corner> all = new ArrayList<>();
    for (Part part : plan.parts()) {
      for (int i = 0; i < part.sideCount(); i++) {
        all.add(new Corner(part.id(), i));
      }
    }
    return all;
  }

  /** The corner nearest to a place; empty for a plan without a part. */
  public static Optional<Corner> nearest(Plan plan, Point place) {
    Optional<Corner> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Corner corner : all(plan)) {
      double off = corner.at(plan).orElseThrow().distance(place);
      if (off < least) {
        least = off;
        best = Optional.of(corner);
      }
    }
    return best;
  }
}
