package longpoint.cli;

/** What the program ends with. */
public final class ExitCode {
  /** All is well. */
  public static final int WELL = 0;

  /** The plan has errors; they were printed. */
  public static final int PLAN_HAS_ERRORS = 1;

  /** The command or a file cannot be used. */
  public static final int UNUSABLE = 2;

  private ExitCode() {}
}
