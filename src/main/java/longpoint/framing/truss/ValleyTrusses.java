package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.run.Run;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleySite;
import longpoint.framing.valley.ValleyTruss;
import longpoint.geometry.Point;

/** The trusses of valley sets as trusses in their places. */
public final class ValleyTrusses {
  /** A flat shorter than this share of the chord is rounding. */
  private static final double FLAT = 1e-6;

  private ValleyTrusses() {}

  public static List<Placed> of(ValleySet set, Run wing) {
    List<Placed> placed = new ArrayList<>();
    for (ValleyTruss t : set.trusses()) {
      double centre = t.x() - wing.part().frame().thickness() / 2;
      placed.add(
          new Placed(
              TrussKind.VALLEY,
              1,
              wing,
              t.x(),
              set.axes().at(centre, t.left()),
              set.axes().at(centre, -t.right()),
              set.site().main().deckAt(t.x()),
              Profile.level(t.length(), top(t, set.site().wing())),
              Optional.empty(),
              Optional.empty()));
    }
    return placed;
  }

  private static List<Point> top(ValleyTruss t, ValleySite.Wing wing) {
    double left = t.height() / wing.left();
    double right = t.length() - t.height() / wing.right();
    List<Point> top = new ArrayList<>(List.of(new Point(0, 0)));
    if (right - left > t.length() * FLAT) {
      top.add(new Point(left, t.height()));
      top.add(new Point(right, t.height()));
    } else {
      top.add(new Point(t.left(), t.height()));
    }
    top.add(new Point(t.length(), 0));
    return top;
  }
}
