package longpoint.desktop;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import longpoint.desktop.canvas.BackdropImages;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.plan.Backdrop;

/** Keeps the picture on the sheet the one of the plan, as it stands in a gesture too. */
final class BackdropShow {
  private final Job job;
  private final PlanCanvas canvas;
  private final BackdropImages unpacked = new BackdropImages(this::update);

  BackdropShow(Job job, PlanCanvas canvas) {
    this.job = job;
    this.canvas = canvas;
  }

  /** Follows the plan; a picture that is still being unpacked shows when it is ready. */
  void update() {
    Optional<Backdrop> picture = job.runner().shown().markup().backdrop();
    Optional<List<BufferedImage>> sizes = picture.flatMap(p -> unpacked.of(p.image()));
    canvas.setBackdrop(
        sizes.flatMap(s -> picture), sizes.orElse(List.of()), Texts.of("picture.unseen"));
  }
}
