package longpoint.field.lift;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.field.lift.LiftPiece.Kind;
import longpoint.field.lift.LiftPiece.WeightFrom;
import longpoint.framing.FramingSet;
import longpoint.framing.Shop;
import longpoint.framing.gable.Ladder;
import longpoint.framing.truss.TrussKind;
import longpoint.geometry.Patch;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Region;
import longpoint.geometry.Segment;
import longpoint.plan.Lift;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/** What goes up with a lift, piece by piece, with its weight and the place it balances. */
final class Weighing {
  private final Plan plan;
  private final Part part;
  private final RoofSurface surface;
  private final FramingSet framing;
  private final Picked picked;
  private final Lift lift;
  private final Shop shop;
  private final Densities densities;
  private final List<LiftPiece> pieces = new ArrayList<>();

  private Weighing(
      Plan plan, Part part, RoofSurface surface, FramingSet framing, Picked picked, Lift lift) {
    this.plan = plan;
    this.part = part;
    this.surface = surface;
    this.framing = framing;
    this.picked = picked;
    this.lift = lift;
    this.shop = Shop.of(plan.unit());
    this.densities = Densities.of(plan.handling().weights(), part.deck().thickness(), plan.unit());
  }

  static List<LiftPiece> pieces(
      Plan plan, Part part, RoofSurface surface, FramingSet framing, Picked picked, Lift lift) {
    Weighing weighing = new Weighing(plan, part, surface, framing, picked, lift);
    picked.trusses().forEach(weighing::truss);
    if (lift.also().contains(Lift.Also.BLOCKS)) {
      weighing.ridgeBlocks();
    }
    if (lift.also().contains(Lift.Also.LADDERS)) {
      weighing.ladders().forEach(weighing::ladder);
    }
    if (lift.also().contains(Lift.Also.DECK)) {
      weighing.deck();
    }
    return weighing.pieces;
  }

  /** Lumber along every line of its shape; a given weight keeps the place the shape balances. */
  private void truss(Picked.Stood stood) {
    double lumber = 0;
    double v = 0;
    double z = 0;
    List<Segment> sticks = new ArrayList<>(stood.mark().shape().chords());
    sticks.addAll(stood.mark().shape().webs());
    for (Segment s : sticks) {
      lumber += s.length();
      v += s.length() * s.middle().x();
      z += s.length() * s.middle().y();
    }
    Point at = stood.at(stood.turned(v / lumber));
    Optional<Double> given =
        Optional.ofNullable(plan.handling().weights().trusses().get(stood.mark().mark()))
            .filter(w -> w > 0);
    double estimate =
        stood.truss().plies() * lumber * shop.flat() * shop.edge() * densities.lumber();
    pieces.add(
        new LiftPiece(
            stood.truss().id(),
            Kind.TRUSS,
            stood.mark().mark(),
            given.orElse(estimate),
            at.at(stood.truss().plate() + z / lumber),
            given.isPresent() ? WeightFrom.GIVEN : WeightFrom.LUMBER));
  }

  /** One to a bay, under the peak. */
  private void ridgeBlocks() {
    double depth = plan.buying().boards().blocking();
    for (int i = 0; i + 1 < picked.trusses().size(); i++) {
      Picked.Stood a = picked.trusses().get(i);
      Picked.Stood b = picked.trusses().get(i + 1);
      Point from = peak(a);
      Point to = peak(b);
      double clear =
          Math.abs(picked.axes().across(to) - picked.axes().across(from))
              - (a.width() + b.width()) / 2;
      if (clear > 0) {
        lumber(
            a.truss().run(),
            Kind.RIDGE_BLOCKS,
            clear * depth * part.frame().thickness(),
            from.toward(to, 0.5).at(Math.min(a.peak(), b.peak()) - depth / 2));
      }
    }
  }

  private static Point peak(Picked.Stood stood) {
    Point high = stood.mark().profile().top().get(0);
    for (Point p : stood.mark().profile().top()) {
      high = p.y() > high.y() ? p : high;
    }
    return stood.at(stood.turned(high.x()));
  }

  /** Those along the gable walls that the section's gable ends stand on. */
  private List<Ladder> ladders() {
    return framing.ladders().stream()
        .filter(l -> picked.trusses().stream().anyMatch(t -> standsOn(t, l)))
        .toList();
  }

  private boolean standsOn(Picked.Stood stood, Ladder ladder) {
    boolean end =
        stood.truss().kind() == TrussKind.GABLE_END
            || stood.truss().kind() == TrussKind.DROPPED_GABLE_END;
    Segment wall = wall(ladder);
    return end
        && stood.truss().run().equals(ladder.run())
        && Math.abs(wall.offset(stood.truss().from())) <= stood.width();
  }

  private Segment wall(Ladder ladder) {
    return plan.side(part, edge(ladder)).wall();
  }

  private static int edge(Ladder ladder) {
    return Integer.parseInt(ladder.side().substring(ladder.side().lastIndexOf('/') + 1));
  }

  /** How far the ladders carry the section past its first truss, or past its last. */
  double past(Picked.Stood stood) {
    return ladders().stream()
        .filter(l -> standsOn(stood, l))
        .mapToDouble(Ladder::overhang)
        .max()
        .orElse(0);
  }

  static double past(
      Plan plan, Part part, FramingSet framing, Picked picked, Lift lift, Picked.Stood stood) {
    if (!lift.also().contains(Lift.Also.LADDERS)) {
      return 0;
    }
    return new Weighing(
            plan, part, new RoofSurface(List.of(), List.of(), List.of()), framing, picked, lift)
        .past(stood);
  }

  private void ladder(Ladder ladder) {
    Segment wall = wall(ladder);
    int sides = part.outline().size();
    int beside =
        ladder.rake() == Ladder.Rake.RIGHT
            ? Math.floorMod(edge(ladder) + 1, sides)
            : Math.floorMod(edge(ladder) - 1, sides);
    Side eave = plan.side(part, beside);
    Point corner = ladder.rake() == Ladder.Rake.RIGHT ? wall.to() : wall.from();
    Point in = (ladder.rake() == Ladder.Rake.RIGHT ? wall.from() : wall.to()).minus(corner).unit();
    Point out = wall.direction().left().times(-1);
    Rake rake = new Rake(eave, corner, in, out, Math.cos(Math.toRadians(90 - ladder.plumbCut())));
    double thick = part.frame().thickness();
    double fly = plan.buying().boards().fascia();
    lumber(
        ladder.side(),
        Kind.FLY_RAFTER,
        ladder.rakeLength() * thick * fly,
        rake.at(ladder.rakeLength() / 2, ladder.overhang() - thick / 2, fly / 2));
    double middle = ladder.overhang() - thick - ladder.lookoutLength() / 2;
    double deep = ladder.lookoutWidth() > shop.flat() ? shop.flat() : shop.edge();
    for (double low : ladder.lookouts()) {
      lumber(
          ladder.side(),
          Kind.LOOKOUTS,
          ladder.lookoutLength() * shop.flat() * shop.edge(),
          rake.at(low + ladder.lookoutWidth() / 2, middle, deep / 2));
    }
    double up = 0;
    for (int i = 0; i < ladder.blocks().size(); i++) {
      double length = ladder.blocks().get(i);
      lumber(
          ladder.side(),
          Kind.LADDER_BLOCKS,
          length * shop.flat() * plan.buying().boards().blocking(),
          rake.at(up + length / 2, 0, deep / 2));
      up += length + ladder.lookoutWidth();
    }
  }

  /** Places along one rake. */
  private record Rake(Side eave, Point corner, Point in, Point out, double cos) {
    /**
     * @param up the slope from the tail's plumb cut
     * @param past the wall's outside face
     * @param below the frame plane, square to it
     */
    Point3 at(double up, double past, double below) {
      Point plan = corner.plus(in.times(up * cos - eave.overhang())).plus(out.times(past));
      return plan.at(eave.framePlane().heightAt(plan) - below / cos);
    }
  }

  private void lumber(String subject, Kind kind, double volume, Point3 centre) {
    if (volume > 0) {
      pieces.add(
          new LiftPiece(subject, kind, "", volume * densities.lumber(), centre, WeightFrom.LUMBER));
    }
  }

  /** Every plane of the part over the section, from tail to tail and face to face. */
  private void deck() {
    LiftSection.Axes axes = picked.axes();
    double least = -past(picked.first());
    double most =
        axes.across(picked.last().truss().from()) + picked.last().width() / 2 + past(picked.last());
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Picked.Stood t : picked.trusses()) {
      for (Point p : t.mark().profile().top()) {
        double over = axes.over(t.at(t.turned(p.x())));
        low = Math.min(low, over);
        high = Math.max(high, over);
      }
    }
    double fascia = plan.defaults().fascia();
    double a = axes.across().dot(axes.origin());
    double o = axes.along().dot(axes.origin());
    for (RoofPlane plane : surface.planes()) {
      if (plane.part().equals(part.id())) {
        List<Region> ground = new ArrayList<>(plane.visible());
        ground.addAll(plane.covered());
        Patch over =
            Patch.of(ground)
                .between(axes.across(), a + least, a + most)
                .between(axes.along(), o + low - fascia, o + high + fascia);
        if (!over.isEmpty() && over.area() > 0) {
          Point centre = over.centre();
          double factor = plane.plane().areaFactor();
          pieces.add(
              new LiftPiece(
                  plane.id(),
                  Kind.DECK,
                  "",
                  over.area() * factor * densities.panel(),
                  centre.at(plane.plane().heightAt(centre) + part.deck().thickness() / 2 * factor),
                  WeightFrom.PANEL));
        }
      }
    }
  }
}
