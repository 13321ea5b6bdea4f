package longpoint.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import longpoint.sheets.Words;
import longpoint.wording.Spacing;

/** Columns that line up in plain text: the first to the left, the others to the right. */
final class TextTable {
  private static final String GAP = "  ";

  private final List<List<String>> rows = new ArrayList<>();
  private final List<String> subjects = new ArrayList<>();

  /**
   * @param heads keys under {@code head}
   */
  TextTable(Words words, String... heads) {
    this(Stream.of(heads).map(h -> words.text("head." + h)).toList());
  }

  TextTable(List<String> heads) {
    rows.add(heads.stream().map(Spacing::plain).toList());
  }

  /** Adds a row; as many cells as there are heads. */
  TextTable row(String... cells) {
    return rowOf("", cells);
  }

  /**
   * Adds a row.
   *
   * @param subject id of the plan or roof element the row is about
   */
  TextTable rowOf(String subject, String... cells) {
    if (cells.length != rows.get(0).size()) {
      throw new IllegalArgumentException("a row needs " + rows.get(0).size() + " cells");
    }
    rows.add(Stream.of(cells).map(Spacing::plain).toList());
    subjects.add(subject);
    return this;
  }

  boolean isEmpty() {
    return rows.size() == 1;
  }

  List<String> heads() {
    return rows.get(0);
  }

  /** All but the heads. */
  List<List<String>> rows() {
    return List.copyOf(rows.subList(1, rows.size()));
  }

  /** What each row is about; empty where it is about nothing that can be picked. */
  List<String> subjects() {
    return List.copyOf(subjects);
  }

  /** Lines ending in a line feed, each indented by two. */
  @Override
  public String toString() {
    int[] widths = new int[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    StringBuilder out = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        String space = " ".repeat(widths[i] - row.get(i).length());
        line.append(GAP).append(i == 0 ? row.get(i) + space : space + row.get(i));
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
    return out.toString();
  }
}
