package longpoint.export;

import java.util.List;
import java.util.Objects;
import longpoint.wording.Language;

/**
 * What a spreadsheet file tells.
 *
 * @param language it is written in
 * @param title of the job
 * @param abouts lines under the title
 * @param cautions what everybody who builds from it must have read; at least one
 * @param tables each on a sheet of its own
 */
public record Workbook(
    Language language,
    String title,
    List<String> abouts,
    List<String> cautions,
    List<Table> tables) {
  public Workbook {
    Objects.requireNonNull(language);
    Objects.requireNonNull(title);
    abouts = List.copyOf(abouts);
    cautions = List.copyOf(cautions);
    tables = List.copyOf(tables);
    if (cautions.isEmpty()) {
      throw new IllegalArgumentException("nothing goes to a roof without its cautions");
    }
  }
}
