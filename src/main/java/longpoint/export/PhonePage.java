package longpoint.export;

import java.util.List;
import java.util.Objects;
import longpoint.drawing.Page;
import longpoint.wording.Language;

/**
 * What a page for phones tells, in its order.
 *
 * @param language it is written in
 * @param title of the page
 * @param abouts lines under the title, such as the unit of the lengths
 * @param cautions what everybody who builds from it must have read; at least one
 * @param warnings what is wrong with the plan, the worst first
 * @param sheets to look at
 * @param tables of figures; the crew ticks off their rows
 */
public record PhonePage(
    Language language,
    String title,
    List<String> abouts,
    List<String> cautions,
    List<Warning> warnings,
    List<Page> sheets,
    List<Table> tables) {
  /**
   * Something to put right first.
   *
   * @param text what is wrong, and where
   * @param cure what would put it right, may be empty
   */
  public record Warning(String text, String cure) {}

  public PhonePage {
    Objects.requireNonNull(language);
    Objects.requireNonNull(title);
    abouts = List.copyOf(abouts);
    cautions = List.copyOf(cautions);
    warnings = List.copyOf(warnings);
    sheets = List.copyOf(sheets);
    tables = List.copyOf(tables);
    if (cautions.isEmpty()) {
      throw new IllegalArgumentException("nothing goes to a roof without its cautions");
    }
  }
}
