package longpoint.export;

import java.io.Writer;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import longpoint.wording.Phrasebook;
import longpoint.wording.Spacing;

/**
 * Tables of a page for phones, a tick box before every row.
 *
 * <p>A tick is remembered under a digest of the figures it was made for. Let a figure change, and
 * its row comes unticked: what was cut to the old figure is not done.
 */
final class HtmlTables {
  /** Longer cells may run over several lines; a length in feet and inches never does. */
  private static final int ONE_LINE = 24;

  private static final Pattern FIGURE = Pattern.compile("^[+\u2212-]?[0-9]");

  /** Bytes of a digest kept: 64 bits tell the rows of any job apart. */
  private static final int KEY_BYTES = 8;

  private final Lines lines;
  private final String title;
  private final Phrasebook words;
  private final Set<String> used = new HashSet<>();

  HtmlTables(Writer out, String title, Phrasebook words) {
    this.lines = new Lines(out);
    this.title = title;
    this.words = words;
  }

  void write(List<Table> tables) {
    line("<section id=\"figures\">");
    line("<h2>%s</h2>", said("page.figures"));
    line("<p class=\"keep\">%s</p>", said("page.tick"));
    line("<p class=\"bar\" hidden=\"hidden\">");
    for (String job : List.of("open", "close", "clear")) {
      line("<button type=\"button\" data-job=\"%s\">%s</button>", job, said("page." + job));
    }
    line("</p>");
    tables.forEach(this::table);
    line("</section>");
  }

  private void table(Table table) {
    line("<details>");
    line(
        "<summary>%s <span class=\"count\">%s</span></summary>",
        shown(table.title()), table.rows().size());
    line("<div class=\"scroll\" tabindex=\"0\">");
    line("<table>");
    line("<thead>");
    List<String> looks = looks(table);
    StringBuilder heads = new StringBuilder("<tr><th scope=\"col\">");
    heads.append(said("page.done")).append("</th>");
    for (int i = 0; i < table.heads().size(); i++) {
      heads.append("<th scope=\"col\"").append(looks.get(i)).append('>');
      heads.append(shown(table.heads().get(i))).append("</th>");
    }
    text(heads.append("</tr>").toString());
    line("</thead>");
    line("<tbody>");
    table.rows().forEach(r -> row(table, r, looks));
    line("</tbody>");
    line("</table>");
    line("</div>");
    table.notes().forEach(n -> line("<p>%s</p>", shown(n)));
    line("</details>");
  }

  private void row(Table table, List<String> cells, List<String> looks) {
    StringBuilder row = new StringBuilder("<tr><td class=\"tick\"><label><input type=\"checkbox\"");
    row.append(" autocomplete=\"off\" data-row=\"").append(key(table, cells));
    row.append("\" aria-label=\"").append(shown(words.text("page.done.row", cells.get(0))));
    row.append("\" /></label></td>");
    for (int i = 0; i < cells.size(); i++) {
      String name = i == 0 ? "th scope=\"row\"" : "td";
      row.append('<').append(name).append(looks.get(i)).append('>');
      row.append(shown(cells.get(i)));
      row.append(i == 0 ? "</th>" : "</td>");
    }
    text(row.append("</tr>").toString());
  }

  /** Columns of figures stand to the right, columns of words to the left, long ones in lines. */
  private static List<String> looks(Table table) {
    return IntStream.range(0, table.heads().size())
        .mapToObj(i -> look(table.rows().stream().map(r -> r.get(i)).toList()))
        .toList();
  }

  private static String look(List<String> column) {
    boolean words = column.stream().anyMatch(c -> !c.isEmpty() && !FIGURE.matcher(c).find());
    boolean lines = column.stream().anyMatch(c -> c.length() > ONE_LINE);
    return lines ? " class=\"word long\"" : words ? " class=\"word\"" : "";
  }

  private String said(String key) {
    return shown(words.text(key));
  }

  private static String shown(String text) {
    return XmlText.escaped(Spacing.kept(text));
  }

  /** Rows that say the same are told apart by their order. */
  private String key(Table table, List<String> cells) {
    int nth = 0;
    String key;
    do {
      List<Object> all = List.of(title, table.title(), table.heads(), cells, nth++);
      key = HexFormat.of().formatHex(Digest.of(all.toString()), 0, KEY_BYTES);
    } while (!used.add(key));
    return key;
  }

  private void line(String pattern, Object... values) {
    lines.line(pattern, values);
  }

  private void text(String line) {
    lines.text(line);
  }
}
