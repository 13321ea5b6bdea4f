package longpoint.packet;

import longpoint.field.takeoff.TakeOff;
import longpoint.plan.SpanRating;
import longpoint.sheets.Words;

/** What to order besides trusses and sheets, as plain text. */
final class TakeOffText {
  private TakeOffText() {}

  /**
   * @param words of this package
   */
  static void write(TakeOff takeOff, Words words, TextSections out) {
    TextTable table = new TextTable(words, "takeOff", "quantity");
    table.row(words.text("takeOff.nails"), String.valueOf(takeOff.fixings().nails()));
    if (takeOff.edgeSupport() == SpanRating.EdgeSupport.CLIPS) {
      table.row(words.text("takeOff.clips"), String.valueOf(takeOff.fixings().clips()));
    }
    table.row(words.text("takeOff.dripEaves"), words.length(takeOff.lines().eaves()));
    table.row(words.text("takeOff.dripRakes"), words.length(takeOff.lines().rakes()));
    table.row(
        words.text("takeOff.cap"), words.length(takeOff.lines().ridges() + takeOff.lines().hips()));
    table.row(words.text("takeOff.valleys"), words.length(takeOff.lines().valleys()));
    table.row(words.text("takeOff.rolls"), String.valueOf(takeOff.covering().rolls()));
    table.row(words.text("takeOff.withWaste"), words.area(takeOff.covering().withWaste()));
    table.row(
        words.text("takeOff.lots." + words.unit().symbol()),
        words.decimal(takeOff.covering().squares(), 2));
    table.row(words.text("takeOff.bundles"), String.valueOf(takeOff.covering().bundles()));
    table.row(
        words.text("takeOff.vents", takeOff.vents().share().key()),
        words.area(takeOff.vents().needed()));
    table.row(words.text("takeOff.soffit"), words.area(takeOff.soffit()));
    if (takeOff.covering().area() > 0) {
      out.section(words.text("takeOff"), table);
    }
  }
}
