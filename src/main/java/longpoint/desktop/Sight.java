package longpoint.desktop;

import java.awt.Insets;
import java.util.Optional;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.surface.RoofLine;

/** Brings things into sight: everything, what is picked, or the place of a problem. */
final class Sight {
  /**
   * A new plan is fitted as soon as its roof is there, again when the rest is worked out, and as
   * its lettering is laid out for the zoom that came of it: after that nothing moves any more.
   */
  private static final int FITS = 6;

  /**
   * Lettering gets at most this share of the sheet, both sides together. On a crowded plan the rows
   * of dimensions take the more room the smaller the plan is shown: without a limit each fit would
   * make it smaller still.
   */
  private static final double MOST_LETTERING = 0.36;

  /** Two zooms this near each other ask for the same room, as a share. */
  private static final double SAME_ZOOM = 0.2;

  /** Share by which the zoom may differ from the one that lettering was laid out for. */
  private static final double LAID_OUT_FOR = 0.005;

  private final Job job;
  private final PlanCanvas canvas;
  private int fits = FITS;
  private boolean fitting;

  /** What was brought into sight: once it is changed the sheet stays where it is. */
  private Plan inSight;

  private boolean wasBlank;

  /** The most pixels that lettering has asked for since all was to be in sight. */
  private double above;

  private double left;
  private double below;
  private double right;

  Sight(Job job, PlanCanvas canvas) {
    this.job = job;
    this.canvas = canvas;
  }

  /** Another plan: all of it in sight once its roof is there. */
  void startOver() {
    fits = FITS;
    inSight = job.document().plan();
    forget();
  }

  private void forget() {
    above = 0;
    left = 0;
    below = 0;
    right = 0;
  }

  /** All of it was brought into sight, and is to stay so when its lettering is laid out anew. */
  void fitted() {
    if (!fitting) {
      startOver();
    }
  }

  /** Someone has moved the sheet, and wants it where it is. */
  void moved() {
    fits = 0;
  }

  /** Follows a new picture. */
  void picture() {
    Plan shown = job.picture().design().plan();
    boolean blank = shown.parts().isEmpty();
    // A picture of a preview may arrive after its gesture is over.
    boolean settled = !job.runner().previewing() && shown.equals(job.document().plan());
    boolean first = wasBlank && !blank && settled;
    wasBlank = blank || wasBlank && !settled;
    boolean whole = setExtent();
    if (first && !canvas.isAllInSight()) {
      startOver(); // the first walls were typed larger than the sheet
      setExtent();
    }
    if (job.runner().shown() != inSight || whole && fits < FITS) {
      fits = 0;
    }
    if (fits > 0) {
      int left = fits - 1;
      fitting = true;
      canvas.fit();
      fitting = false;
      fits = left;
    }
  }

  /**
   * Walls and roof, and how far the lettering reaches beyond them on the screen.
   *
   * @return whether all of it, laid out for this very zoom, is in sight already
   */
  private boolean setExtent() {
    Picture picture = job.picture();
    Bounds bare = Bounds.EMPTY;
    for (Part part : picture.design().plan().parts()) {
      bare = bare.with(part.outline().bounds());
    }
    for (RoofLine line : picture.design().surface().lines()) {
      bare = bare.with(line.from().plan()).with(line.to().plan());
    }
    Bounds all = picture.extent().with(bare);
    double pixels = canvas.pixelsPerMm() / picture.unitsPerMm();
    boolean other = Math.abs(canvas.unitsPerMm() / picture.unitsPerMm() - 1) > SAME_ZOOM;
    if (other) {
      forget(); // laid out for another zoom, it says little of this one
    }
    boolean whole =
        Math.abs(canvas.unitsPerMm() / picture.unitsPerMm() - 1) < LAID_OUT_FOR
            && canvas.shows(
                bare,
                new Insets(
                    pixels(all.maxY() - bare.maxY(), pixels),
                    pixels(bare.minX() - all.minX(), pixels),
                    pixels(bare.minY() - all.minY(), pixels),
                    pixels(all.maxX() - bare.maxX(), pixels)));
    // Never less than before: a nearer view with more rows, and a farther one with fewer, would
    // take turns.
    above = Math.max(above, (all.maxY() - bare.maxY()) * pixels);
    left = Math.max(left, (bare.minX() - all.minX()) * pixels);
    below = Math.max(below, (bare.minY() - all.minY()) * pixels);
    right = Math.max(right, (all.maxX() - bare.maxX()) * pixels);
    double across = within(left + right, canvas.getWidth());
    double up = within(above + below, canvas.getHeight());
    canvas.setExtent(
        bare,
        bare.isEmpty()
            ? new Insets(0, 0, 0, 0)
            : new Insets(
                (int) (up * above),
                (int) (across * left),
                (int) (up * below),
                (int) (across * right)));
    return whole;
  }

  private static int pixels(double units, double pixelsPerUnit) {
    return (int) Math.ceil(units * pixelsPerUnit);
  }

  /** The share of what lettering takes that it gets. */
  private static double within(double wanted, int window) {
    return Math.min(1, MOST_LETTERING * window / Math.max(1, wanted));
  }

  /** Brings into sight what is picked and does not show whole, with all that did. */
  void showPicked() {
    Bounds seen = canvas.seen();
    Bounds picked = picked();
    boolean shows =
        seen.contains(new Point(picked.minX(), picked.minY()))
            && seen.contains(new Point(picked.maxX(), picked.maxY()));
    if (!picked.isEmpty() && !shows) {
      canvas.fit(seen.with(picked));
    }
  }

  private Bounds picked() {
    Plan plan = job.document().plan();
    Bounds box = Bounds.EMPTY;
    for (Ref ref : job.document().selection().refs()) {
      box = box.with(ref.bounds(plan));
    }
    return box;
  }

  /** Brings what is picked into sight, or everything. */
  void fitPicked() {
    Bounds box = picked();
    if (box.isEmpty()) {
      canvas.fit();
    } else {
      canvas.fit(box);
    }
  }

  /** Selects what a problem is about and brings it into sight. */
  void go(Problem problem) {
    Plan plan = job.document().plan();
    ref(plan, problem.where())
        .ifPresent(
            ref -> {
              job.runner().select(Selection.of(ref));
              canvas.centre(problem.at().orElse(ref.bounds(plan).middle()));
            });
  }

  /** The part or side that an id stands for, if the plan has it. */
  static Optional<Ref> ref(Plan plan, String where) {
    for (Part part : plan.parts()) {
      if (part.id().equals(where)) {
        return Optional.of(Ref.part(part.id()));
      }
      for (int i = 0; i < part.sideCount(); i++) {
        if (Side.id(part.id(), i).equals(where)) {
          return Optional.of(Ref.side(part.id(), i));
        }
      }
    }
    return Optional.empty();
  }
}
