package longpoint.field.lumber.saw;

import longpoint.stop.CalledOff;

/**
 * How much more looking is worth it, counted in steps of the knapsack and not in time, so that the
 * same pieces always give the same boards.
 */
final class Effort {
  /** A second or two on a slow machine; a house takes a hundredth of it. */
  private static final long ALL = 1_000_000_000L;

  private long left = ALL;

  void spend(long steps) {
    CalledOff.check();
    left -= steps;
  }

  boolean spent() {
    return left < 0;
  }
}
