package longpoint.field.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.AsBuilt;
import longpoint.plan.AsBuilt.Tape;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.OnSite;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension.Corner;
import longpoint.units.LengthUnit;

/** Plans of one part with tape readings. */
final class Taped {
  private final Plan bare;
  private final List<Tape> tapes = new ArrayList<>();

  private Taped(Plan bare) {
    this.bare = bare;
  }

  static Taped walls(double... xy) {
    return new Taped(Plan.empty(LengthUnit.INCH).withPart(part("main", xy)));
  }

  static Part part(String id, double... xy) {
    Ring ring = Ring.of(xy);
    List<Edge> edges = new ArrayList<>();
    ring.points().forEach(p -> edges.add(Edge.of(EdgeKind.EAVE)));
    return new Part(
        id,
        id,
        false,
        ring,
        List.of(),
        97.125,
        edges,
        Frame.of(LengthUnit.INCH),
        Deck.of(LengthUnit.INCH),
        Extras.NONE);
  }

  /** Corners counted from 0. */
  Taped tape(int from, int to, double reads) {
    tapes.add(Tape.of(new Corner("main", from), new Corner("main", to), reads));
    return this;
  }

  /** Reads between corners that really stand somewhere. */
  Taped tape(int from, int to, List<Point> stand) {
    return tape(from, to, stand.get(from).distance(stand.get(to)));
  }

  Plan plan() {
    AsBuilt walls = new AsBuilt(Optional.empty(), tapes, List.of(), Extras.NONE);
    return bare.withOnSite(OnSite.NONE.withWalls(walls));
  }

  BuiltWalls fitted() {
    return BuiltWalls.of(plan());
  }

  static List<Point> points(double... xy) {
    return Ring.of(xy).points();
  }
}
