package longpoint.planfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import longpoint.geometry.Point;
import longpoint.plan.Backdrop;
import longpoint.plan.EncodedImage;
import longpoint.plan.Markup;
import longpoint.plan.Note;
import longpoint.plan.PlanDimension;

/** Notes, dimensions and pictures of every shape a file can hold. */
final class RandomMarkup {
  private RandomMarkup() {}

  static Markup of(Random r) {
    List<Note> notes = new ArrayList<>();
    for (int i = r.nextInt(3); i > 0; i--) {
      notes.add(
          new Note(
              "n" + i,
              point(r),
              r.nextBoolean() ? Optional.of(point(r)) : Optional.empty(),
              RandomPlans.text(r),
              RandomPlans.extras(r)));
    }
    List<PlanDimension> dimensions = new ArrayList<>();
    for (int i = r.nextInt(3); i > 0; i--) {
      dimensions.add(
          new PlanDimension(
              "d" + i,
              end(r),
              end(r),
              PlanDimension.Along.values()[r.nextInt(3)],
              RandomPlans.number(r),
              RandomPlans.extras(r)));
    }
    return new Markup(
        notes, dimensions, r.nextInt(4) == 0 ? Optional.of(picture(r)) : Optional.empty());
  }

  private static PlanDimension.End end(Random r) {
    return r.nextBoolean()
        ? new PlanDimension.Corner(RandomPlans.text(r), r.nextInt(9))
        : new PlanDimension.Place(point(r));
  }

  private static Backdrop picture(Random r) {
    byte[] bytes = new byte[r.nextInt(9000)];
    r.nextBytes(bytes);
    EncodedImage image =
        new EncodedImage(
            EncodedImage.Type.values()[r.nextInt(2)],
            1 + r.nextInt(4096),
            1 + r.nextInt(99),
            bytes);
    return new Backdrop(
        RandomPlans.text(r),
        image,
        point(r),
        0.01 + r.nextDouble(),
        r.nextInt(360),
        0.1 + 0.9 * r.nextDouble(),
        Backdrop.State.values()[r.nextInt(3)],
        RandomPlans.extras(r));
  }

  private static Point point(Random r) {
    return new Point(RandomPlans.number(r), RandomPlans.number(r));
  }
}
