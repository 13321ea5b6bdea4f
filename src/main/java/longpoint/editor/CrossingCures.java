package longpoint.editor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import longpoint.geometry.Meeting;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Carried;
import longpoint.plan.Edge;
import longpoint.plan.Part;
import longpoint.plan.PlacePoint;
import longpoint.plan.Plan;
import longpoint.plan.PlanCheck;
import longpoint.plan.PlanDimension;
import longpoint.wording.Language;
import longpoint.wording.Phrase;

/**
 * Cures of a wall that crosses another one of its part: the corners between them in the other
 * order, as when two corners were typed the wrong way round; or one of the four corners beside the
 * crossing gone, the one whose going leaves the most ground. Each is offered only where fewer walls
 * cross with it than without.
 */
final class CrossingCures {
  private final Plan plan;
  private final Part part;
  private final int side;
  private final long now;

  private CrossingCures(Plan plan, Part part, int side) {
    this.plan = plan;
    this.part = part;
    this.side = side;
    this.now = crossings(plan);
  }

  static List<Cure> of(Plan plan, Part part, int side) {
    CrossingCures all = new CrossingCures(plan, part, side);
    return all.now == 0 ? List.of() : all.cures();
  }

  private List<Cure> cures() {
    List<Cure> cures = new ArrayList<>();
    for (int other = 0; other < part.sideCount(); other++) {
      if (crosses(other)) {
        if (ring(side) == ring(other)) {
          swapped(Math.min(side, other), Math.max(side, other)).ifPresent(cures::add);
          dropped(other).ifPresent(cures::add);
        } else {
          int hole = ring(side) == 0 ? other : side;
          Command gone = PlanCommands.delete(Selection.of(Ref.side(part.id(), hole)));
          if (helps(gone)) {
            cures.add(Cures.named("courtyard", gone));
          }
        }
      }
    }
    return cures;
  }

  private boolean crosses(int other) {
    boolean apart = other != side && next(other) != side && next(side) != other;
    return apart && Meeting.of(part.side(side), part.side(other)).isPresent();
  }

  /** The corners after the first wall, up to the start of the second, the other way round. */
  private Optional<Cure> swapped(int first, int second) {
    String label = Messages.text("cure.uncross");
    Command swap = Command.of(label, p -> swapped(p, first, second));
    return helps(swap) ? Optional.of(new Cure(label, swap)) : Optional.empty();
  }

  private Plan swapped(Plan in, int first, int second) {
    List<Ring> rings = new ArrayList<>(part.rings());
    int start = start(ring(side));
    Ring old = rings.get(ring(side));
    List<Point> points = new ArrayList<>(old.points());
    Collections.reverse(points.subList(first - start + 1, second - start + 1));
    rings.set(ring(side), new Ring(points));
    List<Edge> edges = new ArrayList<>(part.edges());
    // The walls between the two keep their kinds; each now runs the other way.
    Collections.reverse(edges.subList(first + 1, second));
    Part changed = part.withShape(rings.get(0), rings.subList(1, rings.size()), edges);
    Plan swapped =
        in.withPart(changed)
            .withMarkup(
                in.markup()
                    .withCorners(
                        c ->
                            Optional.of(
                                c.part().equals(part.id()) ? swapped(c, first, second) : c)));
    return Carried.rightWayRound(swapped, part.id());
  }

  private static PlanDimension.End swapped(PlanDimension.Corner c, int first, int second) {
    boolean between = c.corner() > first && c.corner() <= second;
    return between ? new PlanDimension.Corner(c.part(), first + 1 + second - c.corner()) : c;
  }

  private Optional<Cure> dropped(int other) {
    return IntStream.of(side, next(side), other, next(other))
        .distinct()
        .boxed()
        .filter(c -> helps(drop(c)))
        .max(Comparator.comparingDouble(this::ground))
        .map(c -> Cures.named("dropCorner", drop(c), place(c)));
  }

  private String place(int corner) {
    return PlacePoint.of(part.side(corner).from(), plan.unit()).in(Language.ofDesktop());
  }

  private Command drop(int corner) {
    return PlanCommands.delete(Selection.of(Ref.corner(part.id(), corner)));
  }

  private double ground(int corner) {
    Plan rest = ((Outcome.Commit) drop(corner).on(plan)).plan();
    return rest.part(part.id()).orElseThrow().region().area();
  }

  private boolean helps(Command command) {
    return command.on(plan) instanceof Outcome.Commit done
        && crossings(done.plan()) < now
        && done.plan().part(part.id()).orElseThrow().region().area() > 0;
  }

  private long crossings(Plan in) {
    return PlanCheck.check(in).stream()
        .filter(p -> p.wrong() instanceof Phrase w && w.key().startsWith("plan.crosses"))
        .filter(p -> p.where().startsWith(part.id() + "/"))
        .count();
  }

  /** Number of the ring a side belongs to, 0 the outline. */
  private int ring(int of) {
    int ring = 0;
    while (of >= start(ring) + part.rings().get(ring).size()) {
      ring++;
    }
    return ring;
  }

  private int start(int ring) {
    return part.rings().subList(0, ring).stream().mapToInt(Ring::size).sum();
  }

  private int next(int of) {
    int start = start(ring(of));
    return start + (of - start + 1) % part.rings().get(ring(of)).size();
  }
}
