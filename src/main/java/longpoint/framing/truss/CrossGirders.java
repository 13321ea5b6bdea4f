package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longpoint.framing.Shop;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Run;
import longpoint.framing.truss.Placed.Carrier;
import longpoint.geometry.Point;
import longpoint.plan.PlaceName;
import longpoint.plan.PlacePoint;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.wording.Phrase;

/**
 * Girders along the ridge that the user put somewhere. Each hangs at both ends on the nearest truss
 * across, or bears on the end wall; every truss that it crosses in between is cut to its two faces
 * and hangs on it.
 */
final class CrossGirders {
  private final Run run;
  private final Shop shop;
  private final List<Placed> trusses;
  private final List<Problem> problems = new ArrayList<>();

  CrossGirders(Run run, Shop shop, List<Placed> trusses) {
    this.run = run;
    this.shop = shop;
    this.trusses = new ArrayList<>(trusses);
  }

  List<Placed> trusses() {
    return trusses;
  }

  List<Problem> problems() {
    return problems;
  }

  /**
   * @param at plan point on the girder's centre line, at its one bearing
   * @param to at its other
   */
  void put(Point at, Point to, int plies) {
    double width = plies * run.part().frame().thickness();
    double v = run.axes().v(at.toward(to, 0.5));
    double a = run.axes().u(at);
    double b = run.axes().u(to);
    Optional<Placed> first = bearing(Math.min(a, b), v, width);
    Optional<Placed> last = bearing(Math.max(a, b), v, width);
    boolean apart =
        first.isPresent()
            && last.isPresent()
            && near(last.get()) - far(first.get()) > run.part().frame().spacing() / 2;
    if (!apart) {
      problems.add(hangsFree(at, to, width));
      return;
    }
    Placed girder = girder(first.get(), last.get(), v, plies);
    for (Placed truss : List.copyOf(trusses)) {
      if (truss.kind().squareToRidge()
          && near(truss) > far(first.get()) - shop.mark()
          && far(truss) < near(last.get()) + shop.mark()) {
        stop(truss, v, width);
      }
    }
    asGirder(first.get());
    asGirder(last.get());
    trusses.add(girder);
  }

  /** Says so, and which two trusses nearest to its ends would carry it. */
  private Problem hangsFree(Point at, Point to, double width) {
    PlaceName part = PlaceName.of(run.part());
    double v = run.axes().v(at.toward(to, 0.5));
    List<Double> over =
        trusses.stream()
            .filter(t -> t.kind().squareToRidge() && reachesOver(t, v, width))
            .map(Placed::station)
            .toList();
    double a = run.axes().u(at);
    double b = run.axes().u(to);
    Optional<Double> from = nearest(over, a);
    Optional<Double> until =
        from.flatMap(f -> nearest(over.stream().filter(u -> isApart(u, f)).toList(), b));
    if (until.isEmpty()) {
      return Problem.warning(
          run.part().id(), Phrase.of("framing.crossGirder.bearing", part, PlacePoint.of(at)));
    }
    Phrase wrong =
        Phrase.of(
            "framing.crossGirder.bearing",
            part,
            PlacePoint.of(at),
            PlacePoint.of(run.axes().at(from.get(), v)),
            PlacePoint.of(run.axes().at(until.get(), v)));
    return new Problem(
        Problem.Level.WARNING,
        run.part().id(),
        wrong,
        wrong.under("framing.crossGirder.bearing.between"));
  }

  private static Optional<Double> nearest(List<Double> stations, double to) {
    return stations.stream().min(Comparator.comparingDouble(u -> Math.abs(u - to)));
  }

  /** Far enough for a girder between two trusses, whatever their plies. */
  private boolean isApart(double a, double b) {
    return Math.abs(a - b) > 0.9 * run.part().frame().spacing();
  }

  private static double near(Placed truss) {
    return truss.station() - truss.width() / 2;
  }

  private static double far(Placed truss) {
    return truss.station() + truss.width() / 2;
  }

  /** The truss across nearest to a place, if it reaches over the girder's whole width. */
  private Optional<Placed> bearing(double u, double v, double width) {
    return trusses.stream()
        .filter(t -> t.kind().squareToRidge() && reachesOver(t, v, width))
        .filter(t -> Math.abs(t.station() - u) <= run.part().frame().spacing())
        .min(Comparator.comparingDouble(t -> Math.abs(t.station() - u)));
  }

  private boolean reachesOver(Placed truss, double v, double width) {
    double from = run.axes().v(truss.from());
    return v - width / 2 > from + width && v + width / 2 < from + truss.span() - width;
  }

  /** An end truss over a wall lets the wall carry; any other carries by itself. */
  private boolean onWall(Placed truss) {
    double thickness = run.part().frame().thickness();
    return near(truss) < thickness / 2 && !run.bound(Bank.START).isEave() && walled(Bank.START)
        || run.length() - far(truss) < thickness / 2
            && !run.bound(Bank.END).isEave()
            && walled(Bank.END);
  }

  private boolean walled(Bank end) {
    return switch (run.bound(end).kind()) {
      case GABLE, ABUTMENT -> true;
      case EAVE, OPEN -> false;
    };
  }

  private Optional<Carrier> carrier(Placed truss, double v) {
    return onWall(truss)
        ? Optional.empty()
        : Optional.of(new Carrier(run.id(), run.axes().at(truss.station(), v)));
  }

  private void asGirder(Placed truss) {
    if (!onWall(truss) && truss.kind() != TrussKind.HIP_GIRDER) {
      trusses.set(trusses.indexOf(truss), truss.as(TrussKind.GIRDER));
    }
  }

  /** As tall as the roof at its lower face lets it be, its bottom no lower than the ceiling. */
  private Placed girder(Placed first, Placed last, double v, int plies) {
    double from = far(first);
    double to = near(last);
    double half = plies * run.part().frame().thickness() / 2;
    double bottom =
        trusses.stream()
            .filter(t -> t.kind().squareToRidge() && t.station() >= from && t.station() <= to)
            .mapToDouble(t -> Math.min(bottom(t, v - half), bottom(t, v + half)))
            .min()
            .orElse(0);
    List<Envelope.Line> lines = new ArrayList<>();
    for (Side eave : run.eaves()) {
      double low = run.heightOn(eave, from, v - half);
      double high = run.heightOn(eave, from, v + half);
      double face = low < high ? v - half : v + half;
      double foot = run.heightOn(eave, from, face) - run.plate() - bottom;
      double head = run.heightOn(eave, to, face) - run.plate() - bottom;
      lines.add(new Envelope.Line(foot, (head - foot) / (to - from)));
    }
    return new Placed(
        TrussKind.CROSS_GIRDER,
        plies,
        run,
        v,
        run.axes().at(from, v),
        run.axes().at(to, v),
        run.plate() + bottom,
        Profile.level(to - from, Envelope.lowest(lines, 0, to - from)),
        carrier(first, v),
        carrier(last, v));
  }

  private double bottom(Placed truss, double v) {
    return truss.profile().bottomAt(v - run.axes().v(truss.from()));
  }

  /** Cuts a truss in two at the faces of the girder. */
  private void stop(Placed truss, double v, double width) {
    double at = v - run.axes().v(truss.from());
    double a = at - width / 2;
    double b = at + width / 2;
    if (a < width || b > truss.span() - width) {
      return;
    }
    Optional<Carrier> girder =
        Optional.of(new Carrier(run.id(), run.axes().at(truss.station(), v)));
    int place = trusses.indexOf(truss);
    trusses.set(place, piece(truss.piece(0, a, truss.carriedFrom(), girder)));
    trusses.add(place + 1, piece(truss.piece(b, truss.span(), girder, truss.carriedTo())));
  }

  /** What slopes one way only is a mono truss. */
  private static Placed piece(Placed piece) {
    boolean oneSlope = piece.profile().top().size() == 2;
    return switch (piece.kind()) {
      case COMMON, SCISSOR, STEP_DOWN -> oneSlope ? piece.as(TrussKind.MONO) : piece;
      default -> piece;
    };
  }
}
