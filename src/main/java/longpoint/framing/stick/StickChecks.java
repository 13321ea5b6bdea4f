package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import longpoint.framing.rafter.Incline;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.UsualHeel;
import longpoint.units.LengthFigure;
import longpoint.wording.Phrase;

/**
 * What a framer would want said before cutting: notches that take too much, seats that bear on too
 * little, ridge boards shallower than what they hold (IRC R802.3), a post too thin for its hips.
 * The local code rules.
 */
public final class StickChecks {
  /** Beyond this share of the depth a notch is past what a full seat on the plate brings about. */
  private static final double FAR = 1.0 / 3;

  private final Plan plan;
  private final List<Rafter> rafters;
  private final List<Problem> problems = new ArrayList<>();

  private StickChecks(Plan plan, List<Rafter> rafters) {
    this.plan = plan;
    this.rafters = rafters;
  }

  /** At most one problem of each sort for each part. */
  public static List<Problem> check(Plan plan, List<Rafter> rafters) {
    StickChecks checks = new StickChecks(plan, rafters);
    for (Part part : plan.parts()) {
      List<Rafter> own = rafters.stream().filter(r -> r.part().equals(part.id())).toList();
      checks.seats(part, own);
      checks.ridge(part, own);
      checks.post(part, own);
    }
    return checks.problems;
  }

  private void warn(Part part, Phrase what) {
    problems.add(Problem.warning(part.id(), what));
  }

  private LengthFigure length(double length) {
    return new LengthFigure(length, plan.unit());
  }

  /** Commons and jacks: a hip of deeper stock is notched down to the same seat by its nature. */
  private void seats(Part part, List<Rafter> own) {
    List<Rafter> seated =
        own.stream()
            .filter(r -> r.kind() != RafterKind.HIP && r.kind() != RafterKind.VALLEY)
            .filter(r -> r.seat().isPresent())
            .toList();
    Optional<Rafter> deep = most(seated, r -> r.seat().get().share());
    deep.filter(r -> r.seat().get().isDeep())
        .ifPresent(
            r -> {
              Phrase what =
                  Phrase.of(
                      "framing.seat.deep",
                      PlaceName.of(part),
                      length(r.seat().get().notch()),
                      length(r.depth()),
                      length(heel(r, part)));
              boolean far = r.seat().get().share() > FAR;
              problems.add(far ? Problem.warning(part.id(), what) : Problem.note(part.id(), what));
            });
    Optional<Rafter> clear = most(seated, r -> r.seat().get().height() - plumbDepth(r));
    double least = plan.unit().fromMillimetres(UsualHeel.LEAST_BEARING);
    if (clear.isPresent() && clear.get().seat().get().seat() == 0) {
      Rafter r = clear.get();
      warn(
          part,
          Phrase.of(
              "framing.seat.none",
              PlaceName.of(part),
              length(r.seat().get().height() - plumbDepth(r)),
              length(heel(r, part))));
    } else {
      most(seated, r -> -r.seat().get().bearing())
          .filter(r -> r.seat().get().bearing() < least)
          .ifPresent(
              r ->
                  warn(
                      part,
                      Phrase.of(
                          "framing.seat.short",
                          PlaceName.of(part),
                          length(r.seat().get().bearing()),
                          length(least),
                          length(heel(r, part)))));
    }
  }

  private static Optional<Rafter> most(List<Rafter> rafters, ToDoubleFunction<Rafter> figure) {
    return rafters.stream().max(Comparator.comparingDouble(figure));
  }

  private static double plumbDepth(Rafter r) {
    return r.depth() * new Incline(1, r.slope()).length();
  }

  /** The least heel that keeps three quarters of the depth and a seat no wider than the plate. */
  private double heel(Rafter r, Part part) {
    double plate = part.frame().choices().sticks().plateWidth(plan.unit());
    return UsualHeel.least(r.depth(), r.slope(), plate);
  }

  private void ridge(Part part, List<Rafter> own) {
    Optional<Rafter> ridge = own.stream().filter(r -> r.kind() == RafterKind.RIDGE).findFirst();
    Optional<Rafter> common =
        most(
            own.stream()
                .filter(r -> r.kind() == RafterKind.COMMON && r.head().on() == Bearing.RIDGE)
                .toList(),
            StickChecks::plumbDepth);
    if (ridge.isPresent() && common.isPresent() && ridge.get().depth() < plumbDepth(common.get())) {
      problems.add(
          Problem.note(
              part.id(),
              Phrase.of(
                  "framing.ridge.shallow",
                  PlaceName.of(part),
                  length(ridge.get().depth()),
                  length(plumbDepth(common.get())))));
    }
  }

  private void post(Part part, List<Rafter> own) {
    List<Segment> held =
        own.stream()
            .filter(r -> r.head().on() == Bearing.POST)
            .flatMap(r -> r.places().stream())
            .toList();
    double least = 180;
    for (Segment a : held) {
      for (Segment b : held) {
        if (a != b && a.to().distance(b.to()) < part.frame().thickness()) {
          least = Math.min(least, Peaks.between(a.direction(), b.direction()));
        }
      }
    }
    double width = part.frame().thickness() / Math.tan(Math.toRadians(least / 2));
    double post = part.frame().choices().sticks().soundPost().orElse(width);
    if (!held.isEmpty() && post < width) {
      warn(part, Phrase.of("framing.post.thin", PlaceName.of(part), length(post), length(width)));
    }
  }
}
