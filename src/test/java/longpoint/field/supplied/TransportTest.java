package longpoint.field.supplied;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

/**
 * Against the simplex of Apache Commons Math: the transportation problem's linear programme has
 * whole solutions, so its least cost is ours. And against the proof that goes with every answer.
 */
class TransportTest {
  private static final double ALONE = 5;

  @Test
  void costsWhatTheSimplexFindsTheLeast() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      int[] supply = amounts(random);
      int[] demand = amounts(random);
      double[][] cost = new double[supply.length][demand.length];
      for (double[] row : cost) {
        for (int j = 0; j < row.length; j++) {
          // Ties are the hard case.
          row[j] = random.nextBoolean() ? random.nextInt(6) : random.nextDouble() * 15;
        }
      }
      Transport.Plan plan = Transport.solve(supply, demand, cost, ALONE);
      assertThat(plan.cost()).isCloseTo(simplex(supply, demand, cost), within(1e-6));
      assertThat(plan.gap()).isLessThan(1e-9);
      for (int i = 0; i < supply.length; i++) {
        int sent = 0;
        for (int j = 0; j < demand.length; j++) {
          assertThat(plan.flow()[i][j]).isNotNegative();
          sent += plan.flow()[i][j];
        }
        assertThat(sent).isLessThanOrEqualTo(supply[i]);
      }
    }
  }

  private static int[] amounts(Random random) {
    int[] amounts = new int[1 + random.nextInt(5)];
    for (int i = 0; i < amounts.length; i++) {
      amounts[i] = random.nextInt(9);
    }
    return amounts;
  }

  /** What is sent costs its cost less what leaving both ends alone would. */
  private static double simplex(int[] supply, int[] demand, double[][] cost) {
    int n = demand.length;
    int all = supply.length * n;
    double[] worth = new double[all];
    double base = 0;
    List<LinearConstraint> limits = new ArrayList<>();
    for (int i = 0; i < supply.length; i++) {
      double[] row = new double[all];
      for (int j = 0; j < n; j++) {
        worth[i * n + j] = cost[i][j] - 2 * ALONE;
        row[i * n + j] = 1;
      }
      limits.add(new LinearConstraint(row, Relationship.LEQ, supply[i]));
      base += ALONE * supply[i];
    }
    for (int j = 0; j < n; j++) {
      double[] column = new double[all];
      for (int i = 0; i < supply.length; i++) {
        column[i * n + j] = 1;
      }
      limits.add(new LinearConstraint(column, Relationship.LEQ, demand[j]));
      base += ALONE * demand[j];
    }
    return new SimplexSolver()
        .optimize(
            new LinearObjectiveFunction(worth, base),
            new LinearConstraintSet(limits),
            GoalType.MINIMIZE,
            new NonNegativeConstraint(true))
        .getValue();
  }

  @Test
  void whatMayNotGoStaysBehind() {
    double[][] cost = {{Double.POSITIVE_INFINITY, 1}, {Double.POSITIVE_INFINITY, 0}};
    Transport.Plan plan = Transport.solve(new int[] {2, 2}, new int[] {4, 3}, cost, ALONE);
    assertThat(plan.flow()).isDeepEqualTo(new int[][] {{0, 1}, {0, 2}});
    assertThat(Transport.solve(new int[0], new int[0], new double[0][0], 1).cost()).isZero();
  }
}
