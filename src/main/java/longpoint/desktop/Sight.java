package longpoint.desktop;

import java.awt.Insets;
import java.util.Optional;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.drawing.Strokes;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.geometry.Bounds;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.surface.RoofLine;

/** Brings things into sight: everything, what is picked, or the place of a problem. */
final class Sight {
  /**
   * A new plan is fitted as soon as its roof is there, and twice more as its lettering is laid out
   * for the zoom that came of it: after that nothing moves by more than a few pixels.
   */
  private static final int FITS = 3;

  /**
   * Lettering gets at most this fraction of the sheet on each side. On a crowded plan the rows of
   * dimensions take the more room the smaller the plan is shown: without a limit each fit would
   * make it smaller still.
   */
  private static final int MOST_LETTERING = 6;

  private final Job job;
  private final PlanCanvas canvas;
  private int fits = FITS;
  private boolean wasBlank;

  Sight(Job job, PlanCanvas canvas) {
    this.job = job;
    this.canvas = canvas;
  }

  /** Another plan: all of it in sight once its roof is there. */
  void startOver() {
    fits = FITS;
  }

  /** Someone has moved the sheet, and wants it where it is. */
  void moved() {
    fits = 0;
  }

  /** Follows a new picture. */
  void picture() {
    setExtent();
    boolean blank = job.picture().design().plan().parts().isEmpty();
    if (wasBlank && !blank && !job.runner().previewing() && !canvas.isAllInSight()) {
      fits = FITS; // the first walls were typed larger than the sheet
    }
    wasBlank = blank || wasBlank && job.runner().previewing();
    if (fits > 0) {
      int left = fits - 1;
      canvas.fit();
      fits = left;
    }
  }

  /** Walls and roof, and how far the lettering reaches beyond them on the screen. */
  private void setExtent() {
    Picture picture = job.picture();
    Bounds bare = Bounds.EMPTY;
    for (Part part : picture.design().plan().parts()) {
      bare = bare.with(part.outline().bounds());
    }
    for (RoofLine line : picture.design().surface().lines()) {
      bare = bare.with(line.from().plan()).with(line.to().plan());
    }
    Bounds all = Strokes.of(picture.drawing().marks(), picture.unitsPerMm()).bounds().with(bare);
    double pixels = canvas.pixelsPerMm() / picture.unitsPerMm();
    int across = canvas.getWidth() / MOST_LETTERING;
    int up = canvas.getHeight() / MOST_LETTERING;
    canvas.setExtent(
        bare,
        bare.isEmpty()
            ? new Insets(0, 0, 0, 0)
            : new Insets(
                room((all.maxY() - bare.maxY()) * pixels, up),
                room((bare.minX() - all.minX()) * pixels, across),
                room((bare.minY() - all.minY()) * pixels, up),
                room((all.maxX() - bare.maxX()) * pixels, across)));
  }

  /** Pixels for lettering on one side: what it takes, within reason. */
  private static int room(double wanted, int most) {
    return Math.min((int) Math.ceil(wanted), most);
  }

  /** Brings what is picked into sight, or everything. */
  void fitPicked() {
    Plan plan = job.document().plan();
    Bounds box = Bounds.EMPTY;
    for (Ref ref : job.document().selection().refs()) {
      box = box.with(ref.bounds(plan));
    }
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
              canvas.centre(ref.bounds(plan).middle());
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
