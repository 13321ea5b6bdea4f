package longpoint.framing.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import longpoint.geometry.Plane;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Side;

/**
 * A rectangle of a part that one row of trusses or rafters covers. They span from {@code low} to
 * {@code high}; the ridge runs from {@code start} to {@code end}. Its roof is the lowest of its
 * eave planes everywhere.
 *
 * @param id the part's id for its main run; wings of the same part add a dot and a number
 * @param part the part it belongs to
 * @param axes u = 0 at the start, v = 0 at the low wall's outside face
 * @param length outside to outside along the ridge, &gt; 0
 * @param width outside to outside of the bearing walls, &gt; 0
 * @param extensions where a bearing wall stands further out and the roof runs on over it
 */
public record Run(
    String id,
    Part part,
    Axes axes,
    double length,
    double width,
    Bound low,
    Bound high,
    Bound start,
    Bound end,
    List<Extension> extensions) {

  /**
   * A stretch where a bearing wall stands further out.
   *
   * @param bank the bearing wall it replaces, LOW or HIGH
   * @param from start of the stretch, u
   * @param to end of the stretch, u
   * @param depth how much further out
   * @param bound the wall itself
   */
  public record Extension(Bank bank, double from, double to, double depth, Bound bound) {}

  public Run {
    Objects.requireNonNull(part);
    Objects.requireNonNull(axes);
    extensions = List.copyOf(extensions);
    if (!(length > 0) || !(width > 0)) {
      throw new IllegalArgumentException("run " + id + " is " + length + " by " + width);
    }
  }

  public Bound bound(Bank bank) {
    return switch (bank) {
      case LOW -> low;
      case HIGH -> high;
      case START -> start;
      case END -> end;
    };
  }

  public double plate() {
    return part.plateHeight();
  }

  /** The eave sides whose planes roof this run, low and high first. */
  public List<Side> eaves() {
    List<Side> eaves = new ArrayList<>(4);
    for (Bound b : List.of(low, high, start, end)) {
      if (b.isEave()) {
        eaves.add(b.side().orElseThrow());
      }
    }
    return eaves;
  }

  /** Height of an eave's frame plane at a place in this run. */
  public double heightOn(Side eave, double u, double v) {
    Plane plane = eave.framePlane();
    return plane.heightAt(axes.at(u, v));
  }

  /** Height of the roof frame: the lowest of the eave planes. */
  public double heightAt(double u, double v) {
    double lowest = Double.POSITIVE_INFINITY;
    for (Side eave : eaves()) {
      lowest = Math.min(lowest, heightOn(eave, u, v));
    }
    return lowest;
  }

  /** Where the ridge between the two bearing eaves lies across the run; an edge for a shed. */
  public double ridgeV() {
    if (low.isEave() && high.isEave()) {
      return (ridgeHeight() - eaveHeight(low)) / slope(low);
    }
    return low.isEave() ? width : 0;
  }

  /** Frame height of the ridge away from any hips. */
  public double ridgeHeight() {
    return ridgeHeight(low, high, width);
  }

  /**
   * Plan distance from an end wall to where its plane reaches the ridge.
   *
   * @param bank START or END, an eave
   */
  public double hipRun(Bank bank) {
    return (ridgeHeight() - eaveHeight(bound(bank))) / slope(bound(bank));
  }

  /** Plan distance from an eave's wall to the top of its plane. */
  public double planeRun(Bank eave) {
    return switch (eave) {
      case LOW -> ridgeV();
      case HIGH -> width - ridgeV();
      case START, END -> hipRun(eave);
    };
  }

  /** Height at which two opposite eave planes meet; infinite if neither side is an eave. */
  static double ridgeHeight(Bound a, Bound b, double apart) {
    if (a.isEave() && b.isEave()) {
      double runs = 1 / slope(a) + 1 / slope(b);
      return (apart + eaveHeight(a) / slope(a) + eaveHeight(b) / slope(b)) / runs;
    }
    if (a.isEave()) {
      return eaveHeight(a) + slope(a) * apart;
    }
    return b.isEave() ? eaveHeight(b) + slope(b) * apart : Double.POSITIVE_INFINITY;
  }

  static double slope(Bound eave) {
    return eave.side().orElseThrow().slope().ratio();
  }

  /** Frame height of an eave above its outside wall face. */
  static double eaveHeight(Bound eave) {
    Side side = eave.side().orElseThrow();
    return side.plateHeight() + side.heel();
  }

  /** The same run with its start and end changed over. */
  public Run reversed() {
    List<Extension> turned = new ArrayList<>();
    for (Extension e : extensions) {
      Bank other = e.bank() == Bank.LOW ? Bank.HIGH : Bank.LOW;
      turned.add(new Extension(other, length - e.to(), length - e.from(), e.depth(), e.bound()));
    }
    Axes back = new Axes(axes.at(length, width), axes.along().times(-1));
    return new Run(id, part, back, length, width, high, low, end, start, turned);
  }

  /**
   * The same run with its END nearer.
   *
   * @param shorter &gt; 0
   */
  Run endedAt(double shorter) {
    List<Extension> kept = new ArrayList<>();
    for (Extension e : extensions) {
      if (e.from() < shorter) {
        kept.add(
            new Extension(e.bank(), e.from(), Math.min(e.to(), shorter), e.depth(), e.bound()));
      }
    }
    return new Run(id, part, axes, shorter, width, low, high, start, end, kept);
  }

  /**
   * A wing of this run, from its start to where it opens over another part.
   *
   * @param shorter &gt; 0
   */
  Run openedAt(String id, double shorter) {
    Bound mouth = new Bound(EdgeKind.OPEN, end.side());
    return new Run(id, part, axes, shorter, width, low, high, start, mouth, List.of());
  }

  Run withExtension(Extension extension) {
    List<Extension> more = new ArrayList<>(extensions);
    more.add(extension);
    return new Run(id, part, axes, length, width, low, high, start, end, more);
  }
}
