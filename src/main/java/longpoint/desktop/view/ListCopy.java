package longpoint.desktop.view;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import longpoint.export.CsvWriter;

/**
 * Rows of a list on the clipboard. As text its cells stand apart by tabs, which any program takes.
 * As HTML every cell but a count says that it is text, so that a spreadsheet does not take a slope
 * of 8/12 for a day in December, and adds up what can be added. What begins like a formula stays
 * words.
 *
 * @param heads of the columns
 * @param rows each with a cell for every head
 */
public record ListCopy(List<String> heads, List<List<String>> rows) implements Transferable {
  /** How spreadsheets are told that a cell is text: one of them by its style, one by a format. */
  private static final String AS_TEXT = " style=\"mso-number-format:'\\@'\" sdnum=\"0;0;@\"";

  private static final Pattern COUNT = Pattern.compile("0|-?[1-9][0-9]{0,14}");

  public ListCopy {
    heads = List.copyOf(heads);
    rows = rows.stream().map(List::copyOf).toList();
  }

  @Override
  public DataFlavor[] getTransferDataFlavors() {
    return new DataFlavor[] {DataFlavor.allHtmlFlavor, DataFlavor.stringFlavor};
  }

  @Override
  public boolean isDataFlavorSupported(DataFlavor flavor) {
    return List.of(getTransferDataFlavors()).contains(flavor);
  }

  @Override
  public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
    if (flavor.equals(DataFlavor.allHtmlFlavor)) {
      return html();
    }
    if (flavor.equals(DataFlavor.stringFlavor)) {
      return text();
    }
    throw new UnsupportedFlavorException(flavor);
  }

  /** Heads and rows, cells apart by tabs, each line ending in a line feed. */
  public String text() {
    return line(heads) + rows.stream().map(ListCopy::line).collect(Collectors.joining());
  }

  private static String line(List<String> cells) {
    return cells.stream()
        .map(c -> CsvWriter.guarded(c.replaceAll("[\t\r\n]+", " ")))
        .collect(Collectors.joining("\t", "", "\n"));
  }

  /** Heads and rows as a table. */
  public String html() {
    List<String> kinds = IntStream.range(0, heads.size()).mapToObj(this::kind).toList();
    return "<html><head><meta charset=\"utf-8\"></head><body><table>\n"
        + row("th", heads, Collections.nCopies(heads.size(), AS_TEXT))
        + rows.stream().map(r -> row("td", r, kinds)).collect(Collectors.joining())
        + "</table></body></html>";
  }

  /** A column of counts holds nothing else: numbers with noughts before them are names. */
  private String kind(int column) {
    boolean counts =
        rows.stream()
            .map(r -> r.get(column))
            .allMatch(c -> c.isEmpty() || COUNT.matcher(c).matches());
    return counts ? "" : AS_TEXT;
  }

  private static String row(String cell, List<String> cells, List<String> kinds) {
    return IntStream.range(0, cells.size())
        .mapToObj(i -> "<" + cell + kinds.get(i) + ">" + escaped(cells.get(i)) + "</" + cell + ">")
        .collect(Collectors.joining("", "<tr>", "</tr>\n"));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
