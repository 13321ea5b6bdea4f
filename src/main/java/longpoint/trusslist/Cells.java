package longpoint.trusslist;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import longpoint.wording.Phrase;

/**
 * Separated values as rows of cells (RFC 4180, read leniently): parted by semicolons, commas, tabs
 * or bars, whichever the first rows agree on; quoted where they hold a separator; any line ends;
 * UTF-8 or UTF-16 by their byte order marks, else UTF-8, else Windows-1252.
 */
final class Cells {
  /**
   * A row of the file.
   *
   * @param line it starts on, from 1
   */
  record Row(int line, List<String> cells) {
    Row {
      cells = List.copyOf(cells);
    }

    /** What stands in a column; nothing where the row is too short. */
    String cell(int column) {
      return column < cells.size() ? cells.get(column).strip() : "";
    }

    boolean isBlank() {
      return cells.stream().allMatch(String::isBlank);
    }
  }

  private static final String SEPARATORS = ";\t|,";

  /** Rows that are asked which separator they are parted by. */
  private static final int ASKED = 40;

  private static final int MOST_CELLS = 200;

  private final String text;
  private final char separator;
  private int at;
  private int line = 1;

  private Cells(String text, char separator) {
    this.text = text;
    this.separator = separator;
  }

  /** Rows that hold anything, in order. */
  static List<Row> of(byte[] bytes) throws TrussListException {
    String text = decoded(bytes);
    if (text.indexOf('\0') >= 0 || text.startsWith("PK")) {
      throw TrussListException.whole(Phrase.of("trusslist.notText"));
    }
    char best = ';';
    long most = -1;
    for (char separator : SEPARATORS.toCharArray()) {
      long agreed = agreed(text, separator);
      if (agreed > most) {
        most = agreed;
        best = separator;
      }
    }
    return new Cells(text, best).rows(Integer.MAX_VALUE);
  }

  /** Rows of as many cells as most have, times these cells. */
  private static long agreed(String text, char separator) {
    List<Row> rows;
    try {
      rows = new Cells(text, separator).rows(ASKED);
    } catch (TrussListException e) {
      return 0;
    }
    long best = 0;
    for (Row row : rows) {
      int width = row.cells().size();
      long alike = rows.stream().filter(r -> r.cells().size() == width).count();
      best = Math.max(best, width > 1 ? alike * width : 0);
    }
    return best;
  }

  private static String decoded(byte[] bytes) {
    if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
      return new String(bytes, 3, bytes.length - 3, StandardCharsets.UTF_8);
    }
    if (starts(bytes, 0xFF, 0xFE)) {
      return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16LE);
    }
    if (starts(bytes, 0xFE, 0xFF)) {
      return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16BE);
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      return new String(bytes, Charset.forName("windows-1252"));
    }
  }

  private static boolean starts(byte[] bytes, int... with) {
    if (bytes.length < with.length) {
      return false;
    }
    for (int i = 0; i < with.length; i++) {
      if ((bytes[i] & 0xFF) != with[i]) {
        return false;
      }
    }
    return true;
  }

  private List<Row> rows(int most) throws TrussListException {
    List<Row> rows = new ArrayList<>();
    while (at < text.length() && rows.size() < most) {
      Row row = row();
      if (!row.isBlank()) {
        rows.add(row);
      }
    }
    return rows;
  }

  private Row row() throws TrussListException {
    int start = line;
    List<String> cells = new ArrayList<>();
    while (true) {
      cells.add(cell());
      if (cells.size() > MOST_CELLS) {
        throw TrussListException.at(start, Phrase.of("trusslist.wide"));
      }
      if (at >= text.length()) {
        return new Row(start, cells);
      }
      char c = text.charAt(at++);
      if (c != separator) {
        if (c == '\r' && at < text.length() && text.charAt(at) == '\n') {
          at++;
        }
        line++;
        return new Row(start, cells);
      }
    }
  }

  private String cell() throws TrussListException {
    int from = at;
    while (at < text.length() && (text.charAt(at) == ' ' || isOtherTab(text.charAt(at)))) {
      at++;
    }
    if (at < text.length() && text.charAt(at) == '"') {
      int start = at;
      int startLine = line;
      String quoted = quoted();
      if (quoted != null) {
        return quoted;
      }
      // An inch mark that opens nothing: 3 1/2" and the like begin with a figure, so this is odd,
      // and the cell is taken as it stands.
      at = start;
      line = startLine;
    } else {
      at = from;
    }
    int end = at;
    while (end < text.length() && !ends(text.charAt(end))) {
      end++;
    }
    String cell = text.substring(at, end);
    at = end;
    return cell;
  }

  private boolean isOtherTab(char c) {
    return c == '\t' && separator != '\t';
  }

  private boolean ends(char c) {
    return c == separator || c == '\r' || c == '\n';
  }

  /** A quoted cell up to what ends it; null if something else follows its closing quote. */
  private String quoted() throws TrussListException {
    int opened = line;
    StringBuilder cell = new StringBuilder();
    at++;
    while (at < text.length()) {
      char c = text.charAt(at++);
      if (c == '"') {
        if (at < text.length() && text.charAt(at) == '"') {
          cell.append('"');
          at++;
          continue;
        }
        while (at < text.length() && text.charAt(at) == ' ') {
          at++;
        }
        return at >= text.length() || ends(text.charAt(at)) ? cell.toString() : null;
      }
      if (c == '\n') {
        line++;
      }
      cell.append(c);
    }
    throw TrussListException.at(opened, Phrase.of("trusslist.quote"));
  }
}
