package longpoint.desktop.panel;

import java.util.Map;
import java.util.stream.Collectors;
import longpoint.plan.Handling.Weights;

/** Weights of trusses as a list to type in: marks with their weights, {@code T1 145; GE1 160}. */
final class WeightList {
  private WeightList() {}

  static Weights in(Weights before, Map<String, Double> trusses) {
    return new Weights(before.lumber(), before.panel(), trusses, before.extras());
  }

  static String text(Weights weights) {
    return weights.trusses().entrySet().stream()
        .map(e -> e.getKey() + " " + plain(e.getValue()))
        .collect(Collectors.joining("; "));
  }

  /** Without a nought behind the point. */
  static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
