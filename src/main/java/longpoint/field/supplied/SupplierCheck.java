package longpoint.field.supplied;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import longpoint.framing.FramingSet;
import longpoint.framing.truss.TrussMark;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Supplied;
import longpoint.wording.Phrase;

/**
 * The supplier's list against the layout.
 *
 * @param from what the list came in
 * @param trusses rows and the marks they are taken for, in the list's order
 * @param missing trusses of the layout that nothing in the list is like
 * @param surplus trusses of the list that nothing in the layout is like
 */
public record SupplierCheck(
    String from, List<SuppliedTruss> trusses, List<Missing> missing, List<Surplus> surplus) {
  public static final SupplierCheck NONE = new SupplierCheck("", List.of(), List.of(), List.of());

  /**
   * What a truss costs that is left without a match, in inches or so: with one at either end, a row
   * and a truss that are more than four feet apart in all are not the same truss.
   */
  private static final double ALONE = 24;

  /** Two marks are as like a row when their costs differ by less than this: half a notice. */
  private static final double AS_LIKE = 0.0625;

  /**
   * @param mark of the layout
   * @param count how many of it are missing
   */
  public record Missing(String mark, int count) {}

  /**
   * @param row its place in the list, from 0
   * @param line of the file, from 1; 0 if it was typed
   * @param suppliedMark the supplier's mark
   * @param count how many of the row are too many
   */
  public record Surplus(int row, int line, String suppliedMark, int count) {}

  public SupplierCheck {
    Objects.requireNonNull(from);
    trusses = List.copyOf(trusses);
    missing = List.copyOf(missing);
    surplus = List.copyOf(surplus);
  }

  public boolean isEmpty() {
    return trusses.isEmpty() && missing.isEmpty() && surplus.isEmpty();
  }

  /** Whether list and layout agree in everything the list says. */
  public boolean agrees() {
    return missing.isEmpty()
        && surplus.isEmpty()
        && trusses.stream().noneMatch(SuppliedTruss::differs);
  }

  /** {@link #NONE} for a plan without a list. */
  public static SupplierCheck of(Plan plan, FramingSet framing) {
    Supplied supplied = plan.onSite().trusses();
    if (supplied.isEmpty()) {
      return NONE;
    }
    List<Supplied.Row> rows = supplied.trusses();
    List<TrussMark> marks = framing.marks();
    Likeness[][] like = new Likeness[rows.size()][marks.size()];
    double[][] cost = new double[rows.size()][marks.size()];
    for (int i = 0; i < cost.length; i++) {
      for (int j = 0; j < cost[i].length; j++) {
        like[i][j] = Likeness.of(rows.get(i), marks.get(j), plan.unit());
        cost[i][j] = like[i][j].cost();
      }
    }
    int[] supply = rows.stream().mapToInt(Supplied.Row::quantity).toArray();
    int[] demand = marks.stream().mapToInt(TrussMark::quantity).toArray();
    int[][] flow = Transport.solve(supply, demand, cost, ALONE).flow();
    List<SuppliedTruss> trusses = new ArrayList<>();
    List<Surplus> surplus = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Supplied.Row row = rows.get(i);
      for (int j = 0; j < marks.size(); j++) {
        if (flow[i][j] > 0) {
          trusses.add(
              new SuppliedTruss(
                  i,
                  row.line(),
                  row.mark(),
                  marks.get(j).mark(),
                  flow[i][j],
                  like[i][j].differences(),
                  couldBe(like[i], j, marks)));
          supply[i] -= flow[i][j];
          demand[j] -= flow[i][j];
        }
      }
      if (supply[i] > 0) {
        surplus.add(new Surplus(i, row.line(), row.mark(), supply[i]));
      }
    }
    List<Missing> missing = new ArrayList<>();
    for (int j = 0; j < marks.size(); j++) {
      if (demand[j] > 0) {
        missing.add(new Missing(marks.get(j).mark(), demand[j]));
      }
    }
    return new SupplierCheck(supplied.from(), trusses, missing, surplus);
  }

  /** Marks that the same row costs as little with, unless its own name decides. */
  private static List<String> couldBe(Likeness[] row, int taken, List<TrussMark> marks) {
    List<String> others = new ArrayList<>();
    for (int j = 0; j < row.length; j++) {
      if (j != taken && row[j].cost() < row[taken].cost() + AS_LIKE) {
        others.add(marks.get(j).mark());
      }
    }
    return others;
  }

  /** What somebody should hear before the trusses are made. */
  public List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    long off = trusses.stream().filter(SuppliedTruss::differs).count();
    if (off > 0) {
      SuppliedTruss first = trusses.stream().filter(SuppliedTruss::differs).findFirst().get();
      problems.add(
          Problem.warning(
              "plan", Phrase.of("field.supplied.differ", off, first.suppliedMark(), first.mark())));
    }
    for (Missing m : missing) {
      problems.add(
          Problem.warning("plan", Phrase.of("field.supplied.missing", m.count(), m.mark())));
    }
    for (Surplus s : surplus) {
      problems.add(
          Problem.warning(
              "plan", Phrase.of("field.supplied.surplus", s.count(), s.suppliedMark(), s.line())));
    }
    return problems;
  }
}
