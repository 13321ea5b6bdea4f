package longpoint.field.supplied;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import longpoint.framing.truss.TrussMark;
import longpoint.plan.Supplied;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;

/**
 * How a row of the list compares with a truss of the layout.
 *
 * @param cost what taking one for the other costs, in inches or so of difference; infinite where
 *     there is nothing to tell by
 */
record Likeness(List<Difference> differences, double cost) {
  /** The supplier's tolerance for what should be told: 1/8 in, 3 mm. */
  static double notice(LengthUnit unit) {
    return switch (unit) {
      case INCH -> 0.125;
      case MILLIMETRE -> 3;
    };
  }

  /** Above this a figure is another one altogether, and no worse than that. */
  private static final double MOST = 40;

  /** Marks of their own say little; yet between trusses alike the same mark decides. */
  private static final double OTHER_MARK = 0.02;

  private static final double PER_PLY = 3;

  Likeness {
    differences = List.copyOf(differences);
  }

  static Likeness of(Supplied.Row row, TrussMark mark, LengthUnit unit) {
    TrussFigures figures = TrussFigures.of(mark);
    Likeness asDrawn = of(row.figures(), figures, unit);
    Likeness turned = of(row.figures(), figures.turned(), unit);
    Likeness better = turned.cost < asDrawn.cost ? turned : asDrawn;
    boolean same = plain(row.mark()).equals(plain(mark.mark()));
    if (better.differences.isEmpty()) {
      return new Likeness(List.of(), same ? 0 : Double.POSITIVE_INFINITY);
    }
    return new Likeness(better.differences, better.cost + (same ? 0 : OTHER_MARK));
  }

  /** Marks are the same whatever their case and whatever parts letters from digits. */
  static String plain(String mark) {
    return mark.toUpperCase(Locale.ROOT).replaceAll("[\\s._-]+", "");
  }

  private static Likeness of(Supplied.Figures row, TrussFigures truss, LengthUnit unit) {
    List<Difference> all = new ArrayList<>();
    length(all, Difference.Figure.SPAN, row.span(), truss.span(), unit);
    length(all, Difference.Figure.HEIGHT, row.height(), truss.height(), unit);
    slope(all, Difference.Figure.SLOPE, row.slope(), truss.slope(), truss.span() / 2, unit);
    slope(
        all,
        Difference.Figure.OTHER_SLOPE,
        row.otherSlope(),
        truss.otherSlope(),
        truss.span() / 2,
        unit);
    length(all, Difference.Figure.OVERHANG, row.overhang(), truss.overhang(), unit);
    length(all, Difference.Figure.OTHER_OVERHANG, row.otherOverhang(), truss.otherOverhang(), unit);
    length(all, Difference.Figure.HEEL, row.heel(), truss.heel(), unit);
    length(all, Difference.Figure.OTHER_HEEL, row.otherHeel(), truss.otherHeel(), unit);
    row.plies()
        .ifPresent(
            p ->
                all.add(
                    new Difference(
                        Difference.Figure.PLIES,
                        truss.plies(),
                        p,
                        Math.abs(p - truss.plies()),
                        p != truss.plies())));
    double cost = 0;
    for (Difference d : all) {
      boolean plies = d.figure() == Difference.Figure.PLIES;
      double inches =
          plies ? PER_PLY * d.off() : unit.toMillimetres(d.off()) / LengthUnit.MM_PER_INCH;
      cost += Math.min(MOST, inches);
    }
    return new Likeness(all, cost);
  }

  private static void length(
      List<Difference> all,
      Difference.Figure figure,
      Optional<Double> supplied,
      double planned,
      LengthUnit unit) {
    add(all, figure, supplied, planned, s -> Math.abs(s - planned), unit);
  }

  private static void slope(
      List<Difference> all,
      Difference.Figure figure,
      Optional<Slope> supplied,
      double planned,
      double over,
      LengthUnit unit) {
    add(all, figure, supplied.map(Slope::ratio), planned, s -> Math.abs(s - planned) * over, unit);
  }

  private static void add(
      List<Difference> all,
      Difference.Figure figure,
      Optional<Double> supplied,
      double planned,
      Function<Double, Double> off,
      LengthUnit unit) {
    if (supplied.isPresent()) {
      double by = off.apply(supplied.get());
      // A figure just at the limit is let pass, whatever binary fractions make of it.
      boolean differs = by > notice(unit) * (1 + 1e-9);
      all.add(new Difference(figure, planned, supplied.get(), by, differs));
    }
  }
}
