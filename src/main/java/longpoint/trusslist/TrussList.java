package longpoint.trusslist;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.plan.Problem;
import longpoint.plan.Supplied;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/**
 * A supplier's list as it was read.
 *
 * @param supplied its rows
 * @param heads every head of the list, from the left; empty where a column has none
 * @param columns which column holds what, by its place from 0
 * @param notes rows and columns that could not be used, with their line and the cure: nothing is
 *     left out unsaid
 */
public record TrussList(
    Supplied supplied, List<String> heads, Map<Column, Integer> columns, List<Problem> notes) {
  /** Far more than a house has. */
  static final int MOST_ROWS = 2000;

  private static final int MOST_BYTES = 4_000_000;

  /** Heads stand within this many rows from the top, under a title and the like. */
  private static final int HEAD_WITHIN = 30;

  public TrussList {
    heads = List.copyOf(heads);
    columns = Map.copyOf(columns);
    notes = List.copyOf(notes);
  }

  /**
   * @param unit of bare numbers
   * @param chosen columns that the user names: their place from 0; they go before what heads say
   * @throws TrussListException if it cannot be read, or nothing in it looks like a head
   */
  public static TrussList read(Path file, LengthUnit unit, Map<Column, Integer> chosen)
      throws TrussListException {
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw TrussListException.whole(Phrase.of("trusslist.large", MOST_BYTES / 1_000_000));
      }
      return read(Files.readAllBytes(file), String.valueOf(file.getFileName()), unit, chosen);
    } catch (NoSuchFileException e) {
      throw TrussListException.whole(Phrase.of("trusslist.noFile", String.valueOf(file)), e);
    } catch (TrussListException e) {
      throw e;
    } catch (IOException e) {
      throw TrussListException.whole(Phrase.of("trusslist.notRead", String.valueOf(file)), e);
    }
  }

  /**
   * As {@link #read(Path, LengthUnit, Map)}.
   *
   * @param from name of what the list came in
   */
  public static TrussList read(
      byte[] bytes, String from, LengthUnit unit, Map<Column, Integer> chosen)
      throws TrussListException {
    List<Cells.Row> rows = Cells.of(bytes);
    if (rows.isEmpty()) {
      throw TrussListException.whole(Phrase.of("trusslist.empty"));
    }
    Optional<Integer> head = head(rows);
    if (head.isEmpty() && chosen.isEmpty()) {
      throw TrussListException.whole(Phrase.of("trusslist.noHeads"));
    }
    List<Problem> notes = new ArrayList<>();
    List<String> heads =
        head.map(h -> rows.get(h).cells().stream().map(String::strip).toList()).orElse(List.of());
    Map<Column, Heads.Bare> bare = new EnumMap<>(Column.class);
    Map<Column, Integer> columns = columns(heads, chosen, bare, notes);
    int first = head.map(h -> h + 1).orElse(0);
    if (first > 1) {
      int last = rows.get(first - 1).line() - 1;
      notes.add(Problem.note("plan", Phrase.of("trusslist.above", rows.get(0).line(), last)));
    }
    Rows reading = new Rows(unit, columns, bare, notes);
    List<Supplied.Row> supplied = new ArrayList<>();
    for (Cells.Row row : rows.subList(first, rows.size())) {
      if (supplied.size() == MOST_ROWS) {
        throw TrussListException.at(row.line(), Phrase.of("trusslist.long", MOST_ROWS));
      }
      reading.row(row).ifPresent(supplied::add);
    }
    reading.close();
    if (supplied.isEmpty()) {
      throw TrussListException.whole(Phrase.of("trusslist.noRows"));
    }
    return new TrussList(
        new Supplied(from, supplied, longpoint.plan.Extras.NONE), heads, columns, notes);
  }

  /**
   * What stands over the columns of a list, or in its widest row where no head is understood: to
   * ask which column holds what.
   */
  public static List<String> columnsOf(Path file) throws TrussListException {
    List<Cells.Row> rows;
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw TrussListException.whole(Phrase.of("trusslist.large", MOST_BYTES / 1_000_000));
      }
      rows = Cells.of(Files.readAllBytes(file));
    } catch (TrussListException e) {
      throw e;
    } catch (IOException e) {
      throw TrussListException.whole(Phrase.of("trusslist.notRead", String.valueOf(file)), e);
    }
    int shown = 0;
    for (int i = 1; i < Math.min(HEAD_WITHIN, rows.size()); i++) {
      shown = rows.get(i).cells().size() > rows.get(shown).cells().size() ? i : shown;
    }
    return rows.isEmpty() ? List.of() : rows.get(head(rows).orElse(shown)).cells();
  }

  /** Which of some heads are understood, by their place from 0. */
  public static Map<Column, Integer> understood(List<String> heads) {
    return columns(heads, Map.of(), new EnumMap<>(Column.class), new ArrayList<>());
  }

  /** The first row with the most cells that are understood, at least two. */
  private static Optional<Integer> head(List<Cells.Row> rows) {
    Optional<Integer> best = Optional.empty();
    long most = 1;
    for (int i = 0; i < Math.min(HEAD_WITHIN, rows.size()); i++) {
      long known = rows.get(i).cells().stream().filter(c -> Heads.read(c).isPresent()).count();
      if (known > most) {
        most = known;
        best = Optional.of(i);
      }
    }
    return best;
  }

  private static Map<Column, Integer> columns(
      List<String> heads,
      Map<Column, Integer> chosen,
      Map<Column, Heads.Bare> bare,
      List<Problem> notes) {
    Map<Column, Integer> columns = new EnumMap<>(Column.class);
    columns.putAll(chosen);
    List<String> unused = new ArrayList<>();
    for (int i = 0; i < heads.size(); i++) {
      Optional<Heads.Head> read = Heads.read(heads.get(i));
      boolean taken = chosen.containsValue(i);
      if (read.isPresent() && !taken && free(columns, read.get().column()).isPresent()) {
        // A second column of one head is the truss's other end.
        columns.put(free(columns, read.get().column()).orElseThrow(), i);
      } else if (!taken && !heads.get(i).isBlank()) {
        unused.add(heads.get(i));
      }
    }
    columns.forEach(
        (column, place) -> {
          if (place < heads.size()) {
            bare.put(column, Heads.bare(heads.get(place)));
          }
        });
    if (!unused.isEmpty()) {
      notes.add(Problem.note("plan", Phrase.of("trusslist.unused", String.join(", ", unused))));
    }
    return columns;
  }

  private static Optional<Column> free(Map<Column, Integer> columns, Column column) {
    return !columns.containsKey(column)
        ? Optional.of(column)
        : column.other().filter(o -> !columns.containsKey(o));
  }
}
