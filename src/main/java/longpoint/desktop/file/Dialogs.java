package longpoint.desktop.file;

import java.awt.print.PrinterJob;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.print.attribute.PrintRequestAttributeSet;
import longpoint.tracing.CadDrawing;
import longpoint.tracing.Traced;
import longpoint.trusslist.Column;
import longpoint.units.LengthUnit;

/** What the window asks and tells. Tests answer in place of a person. */
public interface Dialogs {
  /** What to do with changes that are not saved. */
  enum Unsaved {
    SAVE,
    DISCARD,
    STAY
  }

  /** What to do with a draft that was left behind. */
  enum LeftDraft {
    OPEN,
    LATER,
    FORGET
  }

  /** Which plan to open; empty for none. */
  Optional<Path> planToOpen(Optional<Path> near);

  /** Which CAD drawing to trace; empty for none. */
  Optional<Path> drawingToOpen(Optional<Path> near);

  /** Which supplier's list of trusses to open; empty for none. */
  Optional<Path> listToOpen(Optional<Path> near);

  /**
   * Which column of a supplier's list holds what, from 0; empty for no list.
   *
   * @param heads from the left
   * @param known columns that were understood
   */
  Optional<Map<Column, Integer>> listColumns(List<String> heads, Map<Column, Integer> known);

  /** How to trace a drawing; empty for not at all. */
  Optional<TracingFlow.Choice> howToTrace(CadDrawing drawing);

  /** Whether lines that all but close are to be closed; empty for no tracing at all. */
  Optional<Traced.Gaps> gaps(Traced traced, LengthUnit unit);

  /** Which picture to lay behind the plan; empty for none. */
  Optional<Path> pictureToOpen(Optional<Path> near);

  /**
   * Where to save a plan; empty for nowhere. Whether an existing file may be replaced has been
   * asked.
   */
  Optional<Path> planToSave(Path suggested);

  /**
   * What a packet shall hold and the folder it goes to; empty for none.
   *
   * @param first what is offered
   */
  Optional<PacketChoice> packet(PacketChoice first);

  /**
   * Where to write one sheet; empty for nowhere.
   *
   * @param endings of the kinds of file there are
   */
  Optional<Path> sheetToWrite(Path suggested, List<String> endings);

  /**
   * Asks which sheets go to which printer.
   *
   * @param wanted filled with what the user chose
   * @return whether to print
   */
  boolean print(PrinterJob job, PrintRequestAttributeSet wanted);

  /** Whether to print although the printer has no paper as large as the sheets. */
  boolean printSmaller(String printer);

  /**
   * Asks before changes are left behind.
   *
   * @param title of the plan
   */
  Unsaved unsaved(String title);

  /**
   * What to do with a draft found after a crash.
   *
   * @param title of the plan, may be empty
   */
  LeftDraft leftDraft(String title);

  /** Says something that has to be read. */
  void tell(String title, String words);
}
