package longpoint.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longpoint.export.Table;
import longpoint.wording.Spacing;

/** Plain text in titled sections, and the sections as tables; one without rows is left out. */
final class TextSections {
  private final StringBuilder out = new StringBuilder();
  private final List<Listing> tables = new ArrayList<>();

  /** The section that lines now belong to. */
  private Optional<Listing> open = Optional.empty();

  private final List<String> notes = new ArrayList<>();

  void section(String worded, TextTable table) {
    String title = Spacing.plain(worded);
    close();
    if (!table.isEmpty()) {
      out.append('\n').append(title).append('\n').append(table);
      Table bare = new Table(title, table.heads(), table.rows(), List.of());
      open = Optional.of(new Listing(bare, table.subjects()));
    }
  }

  /** A line under the last section. */
  void line(String worded) {
    String text = Spacing.plain(worded);
    out.append("  ").append(text).append('\n');
    notes.add(text);
  }

  /** A line that belongs to no section. */
  void heading(String text) {
    out.append(Spacing.plain(text)).append('\n');
  }

  /** The sections so far, each with the lines under it. */
  List<Listing> listings() {
    close();
    return List.copyOf(tables);
  }

  private void close() {
    open.ifPresent(l -> tables.add(noted(l)));
    open = Optional.empty();
    notes.clear();
  }

  private Listing noted(Listing bare) {
    Table t = bare.table();
    return new Listing(new Table(t.title(), t.heads(), t.rows(), notes), bare.subjects());
  }

  /** A choice as people read it. */
  static String key(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
