package longpoint.desktop.view;

import java.util.Locale;

/** What can stand beside the plan, in the order of the switcher. */
public enum Showing {
  /** From outside, to turn. */
  HOUSE,
  /** A truss seen square to its face. */
  OUTLINE,
  /** A plane laid flat, with its pieces and chalk lines. */
  FLAT,
  /** Sheets of paper as they are exported. */
  SHEETS,
  /** Tables of everything. */
  LISTS;

  /** As in tasks, texts and settings. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
