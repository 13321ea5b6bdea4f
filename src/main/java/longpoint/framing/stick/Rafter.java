package longpoint.framing.stick;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import longpoint.framing.square.SquareCut;
import longpoint.framing.square.SquareFigures;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.units.LengthUnit;

/**
 * One rafter to cut and how many of it. Lengths are measured on the middle of the top edge.
 *
 * @param mark letters of its kind and a number, unique in the plan
 * @param part id of its part
 * @param run id of its run
 * @param quantity how many
 * @param mirrored how many of them have left and right changed over
 * @param planRun theoretical, from wall face or valley to the middle of what it meets
 * @param rise over that run
 * @param lineLength theoretical, along the slope
 * @param tail along the slope, past the wall face
 * @param over along the slope, past the head of the line: over a high wall and out to the roof's
 *     edge
 * @param length to cut, between its two end cuts
 * @param plumbCut degrees from the edge
 * @param levelCut degrees from the edge
 * @param square rise and run to hold a framing square to for both: those of the common beside it,
 *     in 12 in or 250 mm, stretched along a hip or valley
 * @param foot how its lower end is cut
 * @param head how its upper end is cut
 * @param drop of a hip whose edge is not backed; 0 for others
 * @param backing bevels of a backed hip, left and right, degrees from its square edge; none for
 *     others
 * @param depth of the stock, as the plan buys it
 * @param thickness of the stock
 * @param seat its birdsmouth, if it sits on a plate
 * @param difference how much longer it is than the next shorter one of its row; none for the first
 * @param places theoretical lines in plan, foot to head; those of the other hand come last
 */
public record Rafter(
    String mark,
    RafterKind kind,
    String part,
    String run,
    int quantity,
    int mirrored,
    double planRun,
    double rise,
    double lineLength,
    double tail,
    double over,
    double length,
    double plumbCut,
    double levelCut,
    SquareFigures square,
    RafterEnd foot,
    RafterEnd head,
    double drop,
    List<Double> backing,
    double depth,
    double thickness,
    Optional<Seat> seat,
    Optional<Double> difference,
    List<Segment> places) {
  /** A cut this near to square is square, degrees. */
  private static final double SQUARE = 0.05;

  public Rafter {
    Objects.requireNonNull(mark);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(foot);
    Objects.requireNonNull(head);
    Objects.requireNonNull(seat);
    Objects.requireNonNull(difference);
    backing = List.copyOf(backing);
    places = List.copyOf(places);
  }

  /** The figures for a side cut; none for a square one. */
  public Optional<SquareCut> squareCut(RafterEnd.Cheek cheek, LengthUnit unit) {
    return cheek.planAngle() > 90 - SQUARE
        ? Optional.empty()
        : Optional.of(SquareCut.of(square, cheek.planAngle(), SquareFigures.unitRun(unit)));
  }

  /** One of its places from the end of its tail to its end over a high wall, on the plan. */
  public Segment drawn(Segment place) {
    double level = 1 / Math.hypot(1, slope());
    Point up = place.direction();
    return new Segment(
        place.from().minus(up.times(tail * level)), place.to().plus(up.times(over * level)));
  }

  /** How the head is cut of the rafter in one of its places, numbered from 0. */
  public RafterEnd headAt(int place) {
    return place < quantity - mirrored ? head : head.turned();
  }

  public RafterEnd footAt(int place) {
    return place < quantity - mirrored ? foot : foot.turned();
  }

  /** Rise over run along its own line. */
  public double slope() {
    return planRun > 0 ? rise / planRun : 0;
  }

  /** Plan length that comes off the foot. */
  public double shortenFoot() {
    return foot.off();
  }

  /** Plan length that comes off the head. */
  public double shortenHead() {
    return head.off();
  }

  /** On the top edge, degrees from the length; 90 is square. */
  public double sideCutFoot() {
    return foot.sideCut();
  }

  public double sideCutHead() {
    return head.sideCut();
  }

  Rafter heldBy(Optional<String> atFoot, Optional<String> atHead) {
    return new Rafter(
        mark,
        kind,
        part,
        run,
        quantity,
        mirrored,
        planRun,
        rise,
        lineLength,
        tail,
        over,
        length,
        plumbCut,
        levelCut,
        square,
        foot.by(atFoot),
        head.by(atHead),
        drop,
        backing,
        depth,
        thickness,
        seat,
        difference,
        places);
  }
}
