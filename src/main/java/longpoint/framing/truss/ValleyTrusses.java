package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.run.Run;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleyTruss;
import longpoint.geometry.Point;

/** The trusses of valley sets as trusses in their places. */
public final class ValleyTrusses {
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
              Profile.level(
                  t.length(),
                  List.of(
                      new Point(0, 0), new Point(t.left(), t.height()), new Point(t.length(), 0))),
              Optional.empty(),
              Optional.empty()));
    }
    return placed;
  }
}
