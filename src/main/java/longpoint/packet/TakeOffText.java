package longpoint.packet;

import java.util.Locale;
import longpoint.field.takeoff.TakeOff;
import longpoint.plan.SpanRating;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/** What to order besides trusses and sheets, as plain text. */
final class TakeOffText {
  private TakeOffText() {}

  static void write(TakeOff takeOff, LengthUnit unit, TextSections out) {
    TextTable table = new TextTable("take-off", "quantity");
    table.row("nails by the schedule", String.valueOf(takeOff.fixings().nails()));
    if (takeOff.edgeSupport() == SpanRating.EdgeSupport.CLIPS) {
      table.row("edge clips", String.valueOf(takeOff.fixings().clips()));
    }
    table.row("drip edge: eaves", LengthText.of(takeOff.lines().eaves(), unit));
    table.row("drip edge: rakes", LengthText.of(takeOff.lines().rakes(), unit));
    table.row("ridge and hip cap", length(takeOff, unit));
    table.row("valleys", LengthText.of(takeOff.lines().valleys(), unit));
    table.row("underlay, rolls", String.valueOf(takeOff.covering().rolls()));
    table.row("roofing, with waste", FigureText.area(takeOff.covering().withWaste(), unit));
    table.row("roofing, " + square(unit), number(takeOff.covering().squares()));
    table.row("roofing, bundles", String.valueOf(takeOff.covering().bundles()));
    table.row(
        "attic vents at " + takeOff.vents().share().key(),
        FigureText.area(takeOff.vents().needed(), unit));
    table.row("soffit", FigureText.area(takeOff.soffit(), unit));
    if (takeOff.covering().area() > 0) {
      out.section("Take-off: which vent share holds is for the local code to say", table);
    }
  }

  private static String length(TakeOff takeOff, LengthUnit unit) {
    return LengthText.of(takeOff.lines().ridges() + takeOff.lines().hips(), unit);
  }

  private static String square(LengthUnit unit) {
    return unit == LengthUnit.INCH ? "squares of 100 sq ft" : "lots of 10 m²";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
