package longpoint.packet;

import java.util.List;
import longpoint.drawing.Page;
import longpoint.export.PhonePage;
import longpoint.pipeline.Design;
import longpoint.wording.Language;

/** What a design puts on the page for phones. */
final class PhoneFigures {
  /** As in the read-me; work at height comes first where a page is read on the roof. */
  private static final List<String> CAUTIONS =
      List.of(
          "Roof work is work at height. Fall protection, temporary restraint of trusses as they"
              + " are set, and lifting under a qualified rigger come before any figure here.",
          "This is an aid to layout and carpentry, not engineering. It sizes no member and no"
              + " connection.",
          "The truss supplier's drawings and installation documents rule over anything here. Local"
              + " code, the building inspector and licensed practice decide what may be built.",
          "Check the walls as they stand before cutting: a plan is square, a building may not be.");

  private PhoneFigures() {}

  static PhonePage of(Design design, List<Page> sheets) {
    List<PhonePage.Warning> warnings =
        design.problems().stream()
            .map(p -> new PhonePage.Warning(FiguresText.told(p, Language.ENGLISH), p.cure()))
            .toList();
    return new PhonePage(
        FiguresText.title(design.plan()),
        List.of(FiguresText.lengths(design.plan().unit())),
        CAUTIONS,
        warnings,
        sheets,
        FiguresText.tables(design));
  }
}
