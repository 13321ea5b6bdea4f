package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.stick.Joint.Face;
import longpoint.geometry.Point;

/** One end of a ridge board with the hips and commons that come to it. */
final class RidgeEnd {
  /** Sine by which a common may be off the ridge's line or square to it. */
  private static final double SQUARE = 0.01;

  private final List<Stick> sticks;
  private final double thickness;
  private final Point at;
  private final int ridge;
  private final Point along;
  private final List<Integer> heads;

  /**
   * @param sticks of the part; those at this end are changed in place
   * @param along from the end, the ridge's direction
   */
  RidgeEnd(List<Stick> sticks, double thickness, Point at, int ridge, List<Integer> heads) {
    this.sticks = sticks;
    this.thickness = thickness;
    this.at = at;
    this.ridge = ridge;
    this.along = Peaks.away(sticks.get(ridge), at);
    this.heads = heads;
  }

  void settle() {
    if (commons().stream().anyMatch(this::isBeside)) {
      betweenCommons();
    } else {
      againstRidge();
    }
  }

  private List<Integer> commons() {
    return heads.stream().filter(i -> Peaks.isCommon(sticks.get(i))).toList();
  }

  private List<Integer> hips() {
    return heads.stream().filter(i -> sticks.get(i).kind() == RafterKind.HIP).toList();
  }

  private Point away(int i) {
    return Peaks.away(sticks.get(i), at);
  }

  private boolean isBeside(int i) {
    return Math.abs(away(i).dot(along)) < SQUARE;
  }

  /** The common that comes up to the ridge's end on its own line. */
  private Optional<Integer> king() {
    return commons().stream().filter(i -> away(i).dot(along) < SQUARE - 1).findFirst();
  }

  /** With one cheek; the ridge runs on until it has the whole of each. */
  private void againstRidge() {
    double on = 0;
    for (int i : hips()) {
      Stick hip = sticks.get(i);
      Joint joint = Joint.against(Bearing.RIDGE, thickness, hip.up(), hip.up(), along);
      sticks.set(i, hip.withHead(joint));
      double cos = Math.max(0, -away(i).dot(along));
      double sine = Math.abs(away(i).cross(along));
      on = Math.max(on, thickness / 2 * (1 + cos) / sine);
    }
    end(on);
  }

  /** With two cheeks; the ridge ends at the far faces of the commons beside it. */
  private void betweenCommons() {
    for (int i : hips()) {
      Stick hip = sticks.get(i);
      List<Face> faces = new ArrayList<>();
      Optional<Integer> beside =
          commons().stream()
              .filter(this::isBeside)
              .filter(c -> away(c).dot(away(i)) > 0)
              .findFirst();
      Point side = beside.map(this::away).orElse(along);
      faces.add(towards(side, i));
      faces.add(king().map(k -> towards(away(k), i)).orElseGet(() -> new Face(at, along)));
      sticks.set(
          i, hip.withHead(Joint.into(Bearing.COMMONS, hip.head(), hip.up(), thickness, faces)));
    }
    end(thickness / 2);
  }

  /** The side of a piece that it turns to a hip. */
  private Face towards(Point piece, int hip) {
    boolean left = piece.cross(away(hip)) > 0;
    return Face.leftOf(at, left ? piece : piece.times(-1), thickness);
  }

  private void end(double on) {
    king()
        .ifPresent(k -> sticks.set(k, sticks.get(k).withHead(Joint.square(Bearing.RIDGE_END, on))));
    sticks.set(ridge, Peaks.end(sticks.get(ridge), at, Joint.square(Bearing.NOTHING, -on)));
  }
}
