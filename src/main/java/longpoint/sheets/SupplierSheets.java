package longpoint.sheets;

import java.util.List;
import java.util.stream.Stream;
import longpoint.field.supplied.SupplierCheck;

/** The supplier's list against the layout on paper, to be sent back to him. */
final class SupplierSheets {
  private SupplierSheets() {}

  /** None for a plan without a list. */
  static List<Sheet> of(Solved solved, SheetBorder border) {
    SupplierCheck check = solved.onSite().trusses();
    if (check.isEmpty()) {
      return List.of();
    }
    Words words = Words.of(solved.plan());
    List<String> reminders =
        Stream.of("supplied.caution.rule", "supplied.caution.agree").map(words::text).toList();
    List<SheetTable> tables =
        SupplierRows.tables(words, check).stream().map(RowTable::onSheet).toList();
    String measures =
        check.from().isBlank()
            ? words.text("supplied.measures")
            : words.text("supplied.measuresFrom", check.from());
    return TableFlow.pages(tables, border.field(reminders)).stream()
        .map(m -> Sheet.tables(words.text("supplied.sheet"), measures, reminders, m))
        .toList();
  }
}
