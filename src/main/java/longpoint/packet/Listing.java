package longpoint.packet;

import java.util.List;
import java.util.Objects;
import longpoint.export.Table;

/**
 * A table of figures that knows what its rows are about.
 *
 * @param subjects for every row the id of the plan or roof element it tells of, as in the marks of
 *     the drawings; empty where there is none
 */
public record Listing(Table table, List<String> subjects) {
  public Listing {
    Objects.requireNonNull(table);
    subjects = List.copyOf(subjects);
    if (subjects.size() != table.rows().size()) {
      throw new IllegalArgumentException("a row without a subject in " + table.title());
    }
  }
}
