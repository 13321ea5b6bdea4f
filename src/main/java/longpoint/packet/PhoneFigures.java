package longpoint.packet;

import java.util.List;
import longpoint.drawing.Page;
import longpoint.export.PhonePage;
import longpoint.pipeline.Design;
import longpoint.wording.Language;

/** What a design puts on the page for phones. */
final class PhoneFigures {
  private PhoneFigures() {}

  static PhonePage of(Design design, List<Page> sheets) {
    List<PhonePage.Warning> warnings =
        design.problems().stream()
            .map(p -> new PhonePage.Warning(FiguresText.told(p, Language.ENGLISH), p.cure()))
            .toList();
    return new PhonePage(
        FiguresText.title(design.plan()),
        List.of(FiguresText.lengths(design.plan().unit())),
        Cautions.ALL,
        warnings,
        sheets,
        FiguresText.tables(design));
  }
}
