package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.framing.stick.Joint.Face;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.plan.Side;

/**
 * The two valley rafters of a wing that is framed through. Of a lower wing the supporting one runs
 * on to the main ridge, or to a hip if that is in the way of both; the supported one stops against
 * it where the wing's ridge does (US Navy NAVEDTRA 14044 vol. 2, p. 2-28). At one height both meet
 * the ridge. A dormer's lie between doubled rafters and a header.
 */
final class ValleyRafters {
  private static final List<Bank> BANKS = List.of(Bank.LOW, Bank.HIGH);

  private final Meeting meeting;
  private final Run wing;
  private final Run main;
  private final Side mainSide;
  private final Plane frame;
  private final double thickness;
  private final Point apex;
  private final List<Point> corners;

  /**
   * @param apex where the wing's ridge comes to the main plane
   * @param low where the valley starts on the wing's low side
   * @param high where it starts on the other
   */
  ValleyRafters(Meeting meeting, Point apex, Point low, Point high) {
    this.meeting = meeting;
    this.wing = meeting.upper();
    this.main = meeting.lower();
    this.mainSide = main.bound(meeting.bank()).side().orElseThrow();
    this.frame = mainSide.framePlane();
    this.thickness = wing.part().frame().thickness();
    this.apex = apex;
    this.corners = List.of(low, high);
  }

  /** Whether it comes out of the roof like a dormer, with headers about its opening. */
  boolean isDormer() {
    return !meeting.endsAtWall();
  }

  /** What a dormer's ridge ends against; one as high as the roof goes to its ridge. */
  private Bearing top() {
    boolean toRidge = Opening.of(meeting).filter(o -> !o.hasUpperHeader()).isPresent();
    return isDormer() && !toRidge ? Bearing.HEADER : Bearing.RIDGE;
  }

  /** Whether the wing's ridge ends below the main ridge, so that one valley must run on to that. */
  private boolean isLower() {
    return !isDormer() && wing.ridgeHeight() < main.ridgeHeight() - thickness;
  }

  /** What the wing's ridge ends against. */
  Joint ridgeEnd() {
    Point along = wing.axes().along();
    if (isDormer()) {
      return Joint.square(top(), thickness / 2);
    }
    if (!isLower()) {
      return Joint.square(Bearing.RIDGE, thickness / 2);
    }
    // Into the corner of both valleys, the supported one square against the other.
    List<Face> faces = new ArrayList<>();
    for (Bank bank : BANKS) {
      Point down = line(bank).times(-1);
      boolean left = down.cross(along.times(-1)) > 0;
      faces.add(Face.leftOf(apex, left ? down : down.times(-1), thickness));
    }
    return Joint.into(Bearing.VALLEY, apex, along, thickness, faces);
  }

  private Point line(Bank bank) {
    return apex.minus(corner(bank));
  }

  private Point corner(Bank bank) {
    return corners.get(BANKS.indexOf(bank));
  }

  /** The side whose valley comes to the ridge with no hip in its way, if there is one. */
  private Bank supporting() {
    return BANKS.stream().filter(b -> hipInTheWay(b).isEmpty()).findFirst().orElse(Bank.LOW);
  }

  /**
   * Where a valley that runs on to the main ridge has got to, as a share of its way to the apex.
   */
  private double toRidge(Bank bank) {
    double foot = frame.heightAt(corner(bank));
    return (main.ridgeHeight() - foot) / (wing.ridgeHeight() - foot);
  }

  /** A hip of the main roof that a valley running on comes to first, and where. */
  private Optional<Hip> hipInTheWay(Bank bank) {
    Point foot = corner(bank);
    Optional<Hip> first = Optional.empty();
    for (Side end : main.eaves()) {
      Plane plane = end.framePlane();
      double closing =
          frame.heightAt(apex) - frame.heightAt(foot) - plane.heightAt(apex) + plane.heightAt(foot);
      double share = (plane.heightAt(foot) - frame.heightAt(foot)) / closing;
      boolean beside = Math.abs(end.wall().direction().cross(mainSide.wall().direction())) > SQUARE;
      if (beside
          && share > 1
          && share < toRidge(bank) - 1e-9
          && first.map(h -> share < h.share()).orElse(true)) {
        first = Optional.of(new Hip(share, RunSticks.hipLine(mainSide, end)));
      }
    }
    return first;
  }

  /** Sine beyond which a wall is an end wall to the other. */
  private static final double SQUARE = 0.5;

  private record Hip(double share, Point line) {}

  List<Stick> lay() {
    List<Stick> valleys = new ArrayList<>();
    for (Bank bank : BANKS) {
      boolean runsOn = isLower() && bank == supporting();
      Optional<Hip> hip = runsOn ? hipInTheWay(bank) : Optional.empty();
      double share = runsOn ? hip.map(Hip::share).orElse(toRidge(bank)) : 1;
      Point foot = corner(bank);
      Point head = foot.toward(apex, share);
      Point up = head.minus(foot);
      double slope = (frame.heightAt(head) - frame.heightAt(foot)) / foot.distance(head);
      Stick valley =
          Stick.of(RafterKind.VALLEY, wing.part().id(), wing.id(), foot, head, slope)
              .withHead(head(up, runsOn ? hip.map(Hip::line) : supportedBy(bank)))
              .withFalls(Stick.Falls.even(up, frame));
      valleys.add(isDormer() ? onTrimmer(valley) : onWalls(valley, bank));
    }
    return valleys;
  }

  /** Direction of the valley that carries this one. */
  private Optional<Point> supportedBy(Bank bank) {
    return isLower() ? Optional.of(line(supporting())) : Optional.empty();
  }

  private Joint head(Point up, Optional<Point> other) {
    Point ridge = wing.axes().along().left();
    if (other.isEmpty() && isLower()) {
      return Joint.against(Bearing.RIDGE, thickness, up, up, ridge);
    }
    if (other.isEmpty()) {
      // Between the header, or the main ridge, and the side of the wing's own.
      Bearing on = top();
      Point out = wing.axes().along().times(-1);
      boolean left = out.cross(up.times(-1)) > 0;
      return Joint.into(
          on,
          apex,
          up,
          thickness,
          List.of(
              new Face(apex.plus(out.times(thickness / 2)), ridge),
              Face.leftOf(apex, left ? out : out.times(-1), thickness)));
    }
    boolean valley = BANKS.stream().anyMatch(b -> line(b).equals(other.get()));
    return Joint.against(valley ? Bearing.VALLEY : Bearing.HIP, thickness, up, up, other.get());
  }

  /** A dormer's valley starts on the doubled rafter beside its opening. */
  private Stick onTrimmer(Stick valley) {
    Point down = valley.up().times(-1);
    Point beside = wing.axes().along();
    return valley.withFoot(Joint.against(Bearing.TRIMMER, thickness, down, valley.up(), beside));
  }

  private Stick onWalls(Stick valley, Bank bank) {
    Side eave = wing.bound(bank).side().orElseThrow();
    Point up = valley.up();
    Point foot = valley.foot();
    return valley
        .withTail(Math.min(tail(mainSide, foot, up), tail(eave, foot, up)))
        .withFoot(Joint.valleyFascia(up, mainSide.wall().direction(), eave.wall().direction()))
        .withHeel(frame.heightAt(foot) - mainSide.plateHeight());
  }

  /** Plan length of a valley from its foot to the tails of one wall. */
  private static double tail(Side side, Point foot, Point up) {
    double sine = side.wall().direction().cross(up.unit());
    return sine > 0 ? Math.max(0, (side.overhang() + side.wall().offset(foot)) / sine) : 0;
  }
}
