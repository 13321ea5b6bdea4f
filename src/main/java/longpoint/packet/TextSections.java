package longpoint.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longpoint.export.Table;

/** Plain text in titled sections, and the sections as tables; one without rows is left out. */
final class TextSections {
  private final StringBuilder out = new StringBuilder();
  private final List<Table> tables = new ArrayList<>();

  /** The section that lines now belong to. */
  private Optional<Table> open = Optional.empty();

  private final List<String> notes = new ArrayList<>();

  void section(String title, TextTable table) {
    close();
    if (!table.isEmpty()) {
      out.append('\n').append(title).append('\n').append(table);
      open = Optional.of(new Table(title, table.heads(), table.rows(), List.of()));
    }
  }

  /** A line under the last section. */
  void line(String text) {
    out.append("  ").append(text).append('\n');
    notes.add(text);
  }

  /** A line that belongs to no section. */
  void heading(String text) {
    out.append(text).append('\n');
  }

  /** The sections so far, each with the lines under it. */
  List<Table> tables() {
    close();
    return List.copyOf(tables);
  }

  private void close() {
    open.ifPresent(t -> tables.add(new Table(t.title(), t.heads(), t.rows(), notes)));
    open = Optional.empty();
    notes.clear();
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
