package longpoint.sheets;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A table before it is put on a sheet or in a list, so that both say the same.
 *
 * @param title above it
 * @param heads keys of the heads; one with a {@code '} before it is flush left and never cut, one
 *     with a {@code "} flush left and cut where it must be, any other stands over figures
 * @param rows as many cells each as there are heads
 * @param subjects what each row is about; empty where there is nothing to pick
 */
public record RowTable(
    Words words, String title, List<String> heads, List<List<String>> rows, List<String> subjects) {
  public RowTable {
    Objects.requireNonNull(words);
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
    subjects = List.copyOf(subjects);
  }

  /** Heads as they stand in a list. */
  public List<String> listHeads() {
    return heads.stream()
        .map(h -> words.text("head." + bare(h)))
        .map(h -> h.substring(0, 1).toLowerCase(Locale.ROOT) + h.substring(1))
        .toList();
  }

  private static String bare(String head) {
    return head.startsWith("'") || head.startsWith("\"") ? head.substring(1) : head;
  }

  /** As it stands on a sheet. */
  SheetTable onSheet() {
    Cells cells = new Cells(words);
    return cells.table(
        title,
        heads.stream()
            .map(
                h ->
                    h.startsWith("'")
                        ? cells.mark(bare(h))
                        : h.startsWith("\"") ? cells.words(bare(h)) : cells.figure(h))
            .toList(),
        rows);
  }
}
