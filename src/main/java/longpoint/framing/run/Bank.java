package longpoint.framing.run;

/** The four sides of a run in its own axes. */
public enum Bank {
  /** v = 0: one bearing wall. */
  LOW,
  /** v = width: the other bearing wall. */
  HIGH,
  /** u = 0. */
  START,
  /** u = length. */
  END
}
