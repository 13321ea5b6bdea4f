package longpoint.packet;

import java.util.List;
import longpoint.drawing.Page;
import longpoint.export.PhonePage;
import longpoint.pipeline.Design;
import longpoint.sheets.Words;

/** What a design puts on the page for phones. */
final class PhoneFigures {
  private PhoneFigures() {}

  static PhonePage of(Design design, List<Page> sheets) {
    Words words = FiguresText.words(design.plan());
    List<PhonePage.Warning> warnings =
        design.problems().stream()
            .map(p -> new PhonePage.Warning(FiguresText.told(p, words), p.cure(words.language())))
            .toList();
    return new PhonePage(
        words.language(),
        FiguresText.title(design.plan()),
        List.of(FiguresText.lengths(design.plan())),
        FiguresText.cautions(design.plan()),
        warnings,
        sheets,
        FiguresText.tables(design));
  }
}
