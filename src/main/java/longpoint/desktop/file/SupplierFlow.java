package longpoint.desktop.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import longpoint.desktop.Errands;
import longpoint.desktop.Job;
import longpoint.desktop.Texts;
import longpoint.editor.PlanCommands;
import longpoint.plan.Problem;
import longpoint.plan.Supplied;
import longpoint.trusslist.Column;
import longpoint.trusslist.TrussList;
import longpoint.trusslist.TrussListException;
import longpoint.units.LengthUnit;

/** The path of a supplier's list of trusses into the plan. */
public final class SupplierFlow {
  /** More would not be read in a dialog; the command line tells all. */
  private static final int MOST_NOTES = 12;

  private final Job job;
  private final Dialogs dialogs;
  private final Errands errands;

  public SupplierFlow(Job job, Dialogs dialogs, Errands errands) {
    this.job = job;
    this.dialogs = dialogs;
    this.errands = errands;
  }

  /** Whether a file's name is that of a list of separated values. */
  public static boolean isList(Path file) {
    return file.getFileName().toString().toLowerCase(Locale.ROOT).matches(".*\\.(csv|tsv|txt)");
  }

  /** Asks which list and holds it against the layout. */
  public void load() {
    dialogs.listToOpen(job.file().map(p -> p.toAbsolutePath().getParent())).ifPresent(this::load);
  }

  /**
   * Reads a list off the event thread; it then stands in the plan. Where no head of it is
   * understood, or none over spans, the user is asked which column holds what.
   */
  public void load(Path file) {
    String name = file.getFileName().toString();
    LengthUnit unit = job.document().plan().unit();
    errands.run(
        Texts.of("state.supplied"),
        watch -> TrussList.columnsOf(file),
        heads -> understood(file, name, unit, heads),
        why -> dialogs.tell(Texts.of("tell.noList", name), said(why)));
  }

  private void understood(Path file, String name, LengthUnit unit, List<String> heads) {
    Map<Column, Integer> known = TrussList.understood(heads);
    if (known.containsKey(Column.SPAN)) {
      read(file, name, unit, Map.of());
    } else {
      dialogs.listColumns(heads, known).ifPresent(chosen -> read(file, name, unit, chosen));
    }
  }

  private void read(Path file, String name, LengthUnit unit, Map<Column, Integer> chosen) {
    errands.run(
        Texts.of("state.supplied"),
        watch -> TrussList.read(file, unit, chosen),
        list -> took(list, name),
        why -> dialogs.tell(Texts.of("tell.noList", name), said(why)));
  }

  private static String said(Throwable why) {
    return why instanceof TrussListException e
        ? e.message(Texts.language())
        : String.valueOf(why.getMessage());
  }

  private void took(TrussList list, String name) {
    Supplied supplied = list.supplied();
    job.runner().apply(PlanCommands.onSite(s -> s.withTrusses(supplied)));
    String words =
        Texts.of("supplied.where")
            + notes(list.notes().stream().limit(MOST_NOTES).toList())
            + (list.notes().size() > MOST_NOTES
                ? "\n" + Texts.of("supplied.more", list.notes().size() - MOST_NOTES)
                : "");
    dialogs.tell(Texts.of("tell.list", supplied.trusses().size(), name), words);
  }

  private static String notes(List<Problem> notes) {
    return notes.stream()
        .map(n -> "\n" + n.message(Texts.language()) + " " + n.cure(Texts.language()))
        .collect(Collectors.joining());
  }
}
