package longpoint.export;

import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Lettering;
import longpoint.units.LengthUnit;

/**
 * Sizes of lettering, dimensions and dashes in a file whose geometry is in real size.
 *
 * @param unit of the geometry
 * @param scale of the print the lettering is meant for: 48 for 1:48, &gt; 0
 */
record DxfScale(LengthUnit unit, double scale) {
  DxfScale {
    if (!(scale > 0) || Double.isInfinite(scale)) {
      throw new IllegalArgumentException("a scale is above 0, not " + scale);
    }
  }

  double unitsPerMm() {
    return unit.fromMillimetres(scale);
  }

  /** A size on paper in the file's unit, before {@code $DIMSCALE} or {@code $LTSCALE}. */
  double paper(double mm) {
    return unit.fromMillimetres(mm);
  }

  boolean inches() {
    return unit == LengthUnit.INCH;
  }

  /** {@code $INSUNITS}: 1 inches, 4 millimetres (published DXF reference). */
  int insertUnits() {
    return inches() ? 1 : 4;
  }

  /** {@code $LUNITS} and {@code $DIMLUNIT}: 4 architectural, 2 decimal. */
  int lengthFormat() {
    return inches() ? 4 : 2;
  }

  /** Sixteenths are the fourth halving; millimetres are whole. */
  int lengthPrecision() {
    return inches() ? 4 : 0;
  }

  double textHeight() {
    return paper(Lettering.SMALL);
  }

  /**
   * The dimension variables that differ from nought, under the group codes of a dimension style or
   * by name in the header.
   */
  void dimensionVariables(Sink sink) {
    sink.number("$DIMSCALE", 40, scale);
    sink.number("$DIMASZ", 41, paper(DimensionLayout.TICK));
    sink.number("$DIMEXO", 42, paper(DimensionLayout.GAP));
    sink.number("$DIMDLI", 43, paper(7));
    sink.number("$DIMEXE", 44, paper(DimensionLayout.PAST));
    sink.number("$DIMTXT", 140, paper(DimensionLayout.TEXT_HEIGHT));
    sink.number("$DIMTSZ", 142, paper(DimensionLayout.TICK / 2));
    sink.number("$DIMLFAC", 144, 1);
    sink.number("$DIMGAP", 147, paper(DimensionLayout.TEXT_GAP));
    sink.whole("$DIMTIH", 73, 0);
    sink.whole("$DIMTOH", 74, 0);
    sink.whole("$DIMTAD", 77, 1); // figure above the line
    sink.whole("$DIMZIN", 78, inches() ? 1 : 0); // nought feet and nought inches are written
    sink.whole("$DIMTOFL", 172, 1); // the line runs through even when the figure stands outside
    sink.whole("$DIMDEC", 271, lengthPrecision());
    sink.whole("$DIMTDEC", 272, lengthPrecision());
    sink.whole("$DIMFRAC", 276, 2); // fractions on the line, not stacked
    sink.whole("$DIMLUNIT", 277, lengthFormat());
    sink.whole("$DIMDSEP", 278, '.');
  }

  /** Takes the variables one by one. */
  interface Sink {
    void number(String name, int code, double value);

    void whole(String name, int code, int value);
  }
}
