package longpoint.field.supplied;

import java.util.List;
import java.util.Objects;

/**
 * Trusses of one row of the list that are taken for trusses of one mark of the layout.
 *
 * @param row its place in the list, from 0
 * @param line of the file, from 1; 0 if it was typed
 * @param suppliedMark the supplier's mark
 * @param mark of the layout
 * @param count how many
 * @param differences of every figure that the list gives
 * @param couldBe other marks of the layout that they are as like
 */
public record SuppliedTruss(
    int row,
    int line,
    String suppliedMark,
    String mark,
    int count,
    List<Difference> differences,
    List<String> couldBe) {
  public SuppliedTruss {
    Objects.requireNonNull(mark);
    differences = List.copyOf(differences);
    couldBe = List.copyOf(couldBe);
  }

  /** Whether anything is off. */
  public boolean differs() {
    return differences.stream().anyMatch(Difference::differs);
  }
}
