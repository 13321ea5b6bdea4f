package longpoint.editor;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.geometry.Point;
import longpoint.plan.Plan;

/** Says where a pointer is taken to be. */
public final class Snapper {
  private Snapper() {}

  /** The place a pointer is held at: a corner within reach, else the grid, else where it is. */
  public static Snap snap(Plan plan, Pointer pointer, Settings settings) {
    if (pointer.holds(Modifier.ALT)) {
      return Snap.free(pointer.at());
    }
    return corner(plan, pointer).orElseGet(() -> grid(pointer.at(), settings.grid()));
  }

  private static Optional<Snap> corner(Plan plan, Pointer pointer) {
    return plan.parts().stream()
        .flatMap(
            part ->
                Stream.iterate(0, i -> i < part.sideCount(), i -> i + 1)
                    .map(i -> part.side(i).from())
                    .map(
                        at ->
                            new Snap(
                                at,
                                Snap.Kind.CORNER,
                                Messages.text("snap.corner", part.name()),
                                List.of())))
        .filter(s -> s.at().distance(pointer.at()) <= pointer.reach())
        .min(Comparator.comparingDouble(s -> s.at().distance(pointer.at())));
  }

  private static Snap grid(Point at, double step) {
    if (step == 0) {
      return Snap.free(at);
    }
    Point rounded = new Point(Math.rint(at.x() / step) * step, Math.rint(at.y() / step) * step);
    return new Snap(rounded, Snap.Kind.GRID, Messages.text("snap.grid"), List.of());
  }
}
