package longpoint.packet;

import java.util.Locale;

/** Plain text in titled sections; a section without rows is left out. */
final class TextSections {
  private final StringBuilder out = new StringBuilder();

  void section(String title, TextTable table) {
    if (!table.isEmpty()) {
      out.append('\n').append(title).append('\n').append(table);
    }
  }

  /** A line under the last section. */
  void line(String text) {
    out.append("  ").append(text).append('\n');
  }

  /** A line that belongs to no section. */
  void heading(String text) {
    out.append(text).append('\n');
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
