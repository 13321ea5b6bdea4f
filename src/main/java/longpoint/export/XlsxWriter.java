package longpoint.export;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import longpoint.stop.CalledOff;
import longpoint.wording.Language;
import longpoint.wording.Phrasebook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Writes tables as a spreadsheet (Office Open XML), a sheet for each, behind one that says what
 * they are.
 *
 * <p>A column of figures stands there twice: as it is read on site, and as a number to reckon with,
 * headed by its unit. Text is always text, whatever it begins with, and no cell holds a formula.
 * The file holds no clock, so the same tables give the same bytes.
 */
public final class XlsxWriter {
  /** Signs the name of a sheet may not hold, and its length (the format's own rule). */
  private static final Pattern UNFIT = Pattern.compile("[\\[\\]:*?/\\\\\\p{Cntrl}]");

  /** Stands for a slash, as in 1/2, where a name may not hold one. */
  private static final char FRACTION = '\u2044';

  private static final int LONGEST_NAME = 31;
  private static final int WIDEST = 60;

  /** Letters of a line in a cell of that width, for certain; and a line's height, points. */
  private static final int WRAPPED = 52;

  private static final double LINE_HEIGHT = 15;
  private static final int NARROWEST = 8;
  private static final int NUMBER_WIDTH = 12;
  private static final String PROPERTIES = "docProps/core.xml";

  /** The two places where the library writes the clock. */
  private static final Pattern CLOCK =
      Pattern.compile("<dcterms:(created|modified)[^>]*>[^<]*</dcterms:\\1>");

  private final Set<String> names = new HashSet<>();

  private final Phrasebook words;

  private XlsxWriter(Language language) {
    this.words = Phrasebook.of("export", language);
  }

  /**
   * Writes the workbook. The stream is flushed, not closed.
   *
   * @throws IOException if the stream cannot be written
   */
  public static void write(Workbook book, OutputStream out) throws IOException {
    // By way of a file: the library's archive can only be read from its end.
    Path file = Files.createTempFile("longpoint", ".xlsx");
    try {
      try (OutputStream raw = Files.newOutputStream(file)) {
        fill(book, raw);
      }
      try (ZipFile zip = new ZipFile(file.toFile())) {
        ZipWriter.write(withoutClock(zip), out);
      }
    } finally {
      Files.deleteIfExists(file);
    }
  }

  private static void fill(Workbook book, OutputStream out) throws IOException {
    try (org.dhatim.fastexcel.Workbook xlsx =
        new org.dhatim.fastexcel.Workbook(out, "Longpoint", "1.0")) {
      xlsx.properties().setTitle(XmlText.allowed(book.title()));
      XlsxWriter writer = new XlsxWriter(book.language());
      String first = writer.words.text("book.first");
      List<String> sheets = new ArrayList<>();
      writer.name(first);
      book.tables().forEach(t -> sheets.add(writer.name(t.title())));
      about(xlsx.newWorksheet(first), book, sheets);
      for (int i = 0; i < sheets.size(); i++) {
        CalledOff.check();
        writer.table(xlsx.newWorksheet(sheets.get(i)), book.tables().get(i));
      }
    }
  }

  private static void about(Worksheet sheet, Workbook book, List<String> names) {
    List<String> lines = new ArrayList<>(List.of(book.title()));
    lines.addAll(book.abouts());
    lines.add("");
    lines.addAll(book.cautions());
    lines.add("");
    for (int i = 0; i < lines.size(); i++) {
      text(sheet, i, 0, lines.get(i));
      if (lines.get(i).length() > WIDEST) {
        sheet.style(i, 0).wrapText(true).set();
        sheet.rowHeight(i, LINE_HEIGHT * (1 + lines.get(i).length() / WRAPPED));
      }
    }
    sheet.style(0, 0).bold().set();
    sheet.width(0, WIDEST);
    sheet.width(1, LONGEST_NAME);
    int row = lines.size();
    for (int i = 0; i < names.size(); i++) {
      text(sheet, row + i, 0, book.tables().get(i).title());
      text(sheet, row + i, 1, names.get(i));
    }
  }

  private void table(Worksheet sheet, Table table) {
    List<Column> columns = columns(table);
    for (int i = 0; i < columns.size(); i++) {
      text(sheet, 0, i, columns.get(i).head());
      sheet.style(0, i).bold().fillColor("DDDDDD").wrapText(true).set();
      sheet.width(i, columns.get(i).width());
    }
    for (int r = 0; r < table.rows().size(); r++) {
      for (int i = 0; i < columns.size(); i++) {
        columns.get(i).put(sheet, r + 1, i, table.rows().get(r));
      }
    }
    int row = table.rows().size() + 1;
    for (String note : table.notes()) {
      text(sheet, row++, 0, note);
    }
    sheet.freezePane(0, 1);
    sheet.repeatRows(0);
    sheet.setFitToPage(true);
    sheet.fitToWidth((short) 1);
    sheet.fitToHeight((short) 0);
    if (!table.rows().isEmpty()) {
      sheet.setAutoFilter(0, 0, table.rows().size(), columns.size() - 1);
    }
  }

  private List<Column> columns(Table table) {
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < table.heads().size(); i++) {
      int at = i;
      String head = table.heads().get(i);
      List<String> cells = table.rows().stream().map(r -> r.get(at)).toList();
      columns.add(new Column(head, i, "", width(head, cells)));
      cells.stream()
          .flatMap(c -> ReadFigure.of(c).stream())
          .map(ReadFigure::unit)
          .filter(u -> !u.isEmpty())
          .distinct()
          .map(u -> numbers(words.text("book.number", head, words.text("unit." + u)), at, u))
          .forEach(columns::add);
    }
    return columns;
  }

  private static Column numbers(String head, int cell, String unit) {
    return new Column(head, cell, unit, Math.max(NUMBER_WIDTH, head.length() + 2));
  }

  private static int width(String head, List<String> cells) {
    int longest = cells.stream().mapToInt(String::length).max().orElse(0);
    return Math.max(NARROWEST, Math.min(WIDEST, Math.max(longest, head.length()) + 2));
  }

  /**
   * @param unit of the numbers it holds; empty for the column as it is read
   */
  private record Column(String head, int cell, String unit, int width) {
    void put(Worksheet sheet, int row, int column, List<String> cells) {
      String text = cells.get(cell);
      Optional<ReadFigure> figure = ReadFigure.of(text).filter(f -> f.unit().equals(unit));
      if (figure.isPresent()) {
        sheet.value(row, column, plain(figure.get().value()));
      } else if (unit.isEmpty()) {
        text(sheet, row, column, text);
        if (ReadFigure.of(text).isPresent()) {
          sheet.style(row, column).horizontalAlignment("right").set();
        } else {
          // Or words run into the number before them.
          sheet.style(row, column).horizontalAlignment("left").indent(1).set();
        }
      }
    }
  }

  /** A whole number is written as one, not as 13.0. */
  private static Number plain(double value) {
    boolean whole = value == Math.rint(value) && Math.abs(value) < Integer.MAX_VALUE;
    return whole ? (Number) (int) value : (Number) value;
  }

  private static void text(Worksheet sheet, int row, int column, String text) {
    sheet.value(row, column, XmlText.allowed(text));
  }

  /** What stands before the first comma or colon, cut to length, told apart by a number. */
  private String name(String title) {
    String plain =
        UNFIT.matcher(title.split("[,:;]", 2)[0].replace('/', FRACTION)).replaceAll(" ").strip();
    String stem = XmlText.allowed(plain).replaceAll("^'+|'+$", "");
    String name = cut(stem.isEmpty() ? words.text("book.table") : stem, LONGEST_NAME);
    for (int n = 2; !names.add(name.toLowerCase(Locale.ROOT)); n++) {
      String end = " " + n;
      name = cut(stem, LONGEST_NAME - end.length()).strip() + end;
    }
    return name;
  }

  private static String cut(String text, int most) {
    if (text.length() <= most) {
      return text;
    }
    boolean half = Character.isHighSurrogate(text.charAt(most - 1));
    return text.substring(0, half ? most - 1 : most).strip();
  }

  private static List<ZipWriter.Member> withoutClock(ZipFile zip) {
    List<ZipWriter.Member> members = new ArrayList<>();
    zip.stream().forEach(e -> members.add(new ZipWriter.Member(e.getName(), copy(zip, e))));
    return members;
  }

  private static ZipWriter.Content copy(ZipFile zip, ZipEntry entry) {
    return out -> {
      try (InputStream in = zip.getInputStream(entry)) {
        if (entry.getName().equals(PROPERTIES)) {
          out.write(timeless(in.readAllBytes()));
        } else {
          in.transferTo(out);
        }
      }
    };
  }

  private static byte[] timeless(byte[] properties) {
    String text = new String(properties, StandardCharsets.UTF_8);
    return CLOCK.matcher(text).replaceAll("").getBytes(StandardCharsets.UTF_8);
  }
}
