package longpoint.framing.run;

import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Join.MadeFor;
import longpoint.plan.Side;

/**
 * Where one run's roof runs into another's.
 *
 * @param upper the wing, turned if need be so that its END faces the run it meets; a shed's upper
 *     bearing side does
 * @param lower the run beneath
 * @param bank the side of {@code lower} the wing comes in over
 * @param from first end of the wing's width, measured along the lower run: u over LOW and HIGH, v
 *     over START and END
 * @param to the other end
 * @param depth plan distance from the lower run's outside wall face in to the end of the wing
 * @param manner how it is built
 */
public record Meeting(
    Run upper, Run lower, Bank bank, double from, double to, double depth, Manner manner) {

  /** A framed wall is no thicker than this many trusses: 6 in, 2x6 studs and a little. */
  private static final double WALL = 4;

  /** How a meeting is built. */
  public enum Manner {
    /** Valley trusses made for the bare frame, set on the lower roof's deck. */
    OVERLAY_FRAME,
    /** Valley trusses made for the deck they stand on. */
    OVERLAY_DECK,
    /** The lower trusses stop at a girder; valley trusses stand on the bare frame. */
    THROUGH,
    /** The wing's ridge is not square to the eave below: rafters on the deck. */
    SKEW,
    /** A shed roof whose open side runs on as rafters until it meets the deck beyond. */
    SHED,
    /** A shed dormer in an opening of the rafters beneath, up to the header across it. */
    SHED_THROUGH;

    public boolean isShed() {
      return this == SHED || this == SHED_THROUGH;
    }

    /** Whether the lower roof is cut. */
    public boolean isThrough() {
      return this == THROUGH || this == SHED_THROUGH;
    }

    public MadeFor madeFor() {
      return this == OVERLAY_DECK ? MadeFor.DECK : MadeFor.FRAME;
    }
  }

  /** Whether the lower run's trusses lose their wall along the mouth and hang on a girder. */
  public boolean needsGirder() {
    return manner == Manner.THROUGH && lower.bound(bank).isEave() && endsAtWall();
  }

  /** Where a point lies along the lower run's wall, as {@link #from} is measured. */
  public double along(Point p) {
    return PartRuns.along(lower, bank, p);
  }

  /** Whether the wing ends at the lower run's wall, as against inside it like a dormer. */
  public boolean endsAtWall() {
    return Math.abs(depth) < lower.part().frame().thickness();
  }

  /** Whether it is at this end of this run that the girder or the last truss of the wing stands. */
  public boolean isAt(Run run, Bank end) {
    boolean sameWay = upper.axes().along().dot(run.axes().along()) > 0;
    return upper.id().equals(run.id()) && end == (sameWay ? Bank.END : Bank.START);
  }

  /** Whether level valley trusses sit on the plane beneath. */
  public boolean takesValleyTrusses() {
    return switch (manner) {
      case OVERLAY_FRAME, OVERLAY_DECK, THROUGH -> lower.bound(bank).isEave();
      case SKEW, SHED, SHED_THROUGH -> false;
    };
  }

  /**
   * The surface the wing comes in over: top of the deck, or of the bare frame when framed through.
   * The bank beneath must be an eave.
   */
  public Plane beneath() {
    Plane frame = lower.bound(bank).side().orElseThrow().framePlane();
    double deck = manner.isThrough() ? 0 : lower.part().deck().thickness();
    return frame.raised(deck * frame.areaFactor());
  }

  /**
   * Plan distance from the lower run's wall face in to where the surface beneath reaches the top of
   * the wing's plates; 0 if it is above them at the wall already. The bank beneath must be an eave.
   */
  double wallsEnd() {
    Side side = lower.bound(bank).side().orElseThrow();
    double atWall = beneath().heightAt(side.wall().from());
    return Math.max(0, (upper.plate() - atWall) / side.slope().ratio());
  }

  /** Whether mono trusses of a shed roof can stand on the lower run's wall at their upper end. */
  boolean seatsTrusses() {
    Segment wall = lower.bound(bank).side().orElseThrow().wall();
    Point open = upper.axes().at(upper.length() / 2, upper.low().isEave() ? upper.width() : 0);
    return Math.abs(wall.offset(open)) < WALL * lower.part().frame().thickness();
  }

  /**
   * Plan distance a shed roof runs on past its open side; negative where it meets the deck short of
   * that side; 0 if it never comes out above the deck, or does not come down to it below its ridge.
   */
  public double shedRun() {
    boolean climbsHigh = upper.low().isEave();
    Side eave = (climbsHigh ? upper.low() : upper.high()).side().orElseThrow();
    Point open = upper.axes().at(0, climbsHigh ? upper.width() : 0);
    Plane under = beneath();
    double room = eave.framePlane().heightAt(open) - under.heightAt(open);
    double closing = under.slope() - eave.slope().ratio();
    double on = closing > 0 ? room / closing : 0;
    double in = lower.bound(bank).side().orElseThrow().wall().offset(open);
    return -on < upper.width() && in + on < lower.planeRun(bank) ? on : 0;
  }
}
