package longpoint.framing.stick;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import longpoint.geometry.Segment;

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
 * @param foot how its lower end is cut
 * @param head how its upper end is cut
 * @param drop of a hip whose edge is not backed; 0 for others
 * @param backing bevels of a backed hip, left and right, degrees from its square edge; none for
 *     others
 * @param depth of the stock, as the plan buys it
 * @param thickness of the stock
 * @param seat its birdsmouth, if it sits on a plate
 * @param difference how much longer it is than the next shorter one of its row; none for the first
 * @param places theoretical lines in plan, foot to head
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
    RafterEnd foot,
    RafterEnd head,
    double drop,
    List<Double> backing,
    double depth,
    double thickness,
    Optional<Seat> seat,
    Optional<Double> difference,
    List<Segment> places) {
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
