package longpoint.desktop.panel;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What several selected things have in common. */
final class Shared {
  private Shared() {}

  /** The value that all have; empty when they differ or there are none. */
  static <S, T> Optional<T> value(List<S> things, Function<S, T> of) {
    List<T> values = things.stream().map(of).distinct().limit(2).toList();
    return values.size() == 1 ? Optional.of(values.get(0)) : Optional.empty();
  }
}
