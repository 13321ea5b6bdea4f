package longpoint.desktop;

import java.awt.print.PrinterJob;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import javax.print.attribute.PrintRequestAttributeSet;
import longpoint.desktop.file.Dialogs;
import longpoint.desktop.file.PacketChoice;
import longpoint.desktop.file.TracingFlow;
import longpoint.tracing.CadDrawing;
import longpoint.tracing.Traced;
import longpoint.units.LengthUnit;

/** Answers in place of a person, in the order given. */
final class ScriptedDialogs implements Dialogs {
  Optional<Path> open = Optional.empty();
  Optional<Path> save = Optional.empty();
  Optional<Path> picture = Optional.empty();
  Optional<Path> drawing = Optional.empty();
  Optional<Path> list = Optional.empty();
  Optional<java.util.Map<longpoint.trusslist.Column, Integer>> columns = Optional.empty();
  Optional<Path> folder = Optional.empty();
  Optional<Traced.Gaps> gaps = Optional.empty();
  Optional<Path> sheet = Optional.empty();
  Unsaved unsaved = Unsaved.STAY;
  LeftDraft leftDraft = LeftDraft.LATER;
  BiPredicate<PrinterJob, PrintRequestAttributeSet> printing = (printer, wanted) -> false;
  boolean smaller;
  int asked;
  String told = "";

  @Override
  public Optional<Path> planToOpen(Optional<Path> near) {
    return open;
  }

  @Override
  public Optional<Path> drawingToOpen(Optional<Path> near) {
    return drawing;
  }

  @Override
  public Optional<Path> listToOpen(Optional<Path> near) {
    return list;
  }

  @Override
  public Optional<java.util.Map<longpoint.trusslist.Column, Integer>> listColumns(
      List<String> heads, java.util.Map<longpoint.trusslist.Column, Integer> known) {
    return columns;
  }

  @Override
  public Optional<TracingFlow.Choice> howToTrace(CadDrawing drawing) {
    return Optional.of(TracingFlow.Choice.likely(drawing));
  }

  @Override
  public Optional<Traced.Gaps> gaps(Traced traced, LengthUnit unit) {
    asked++;
    return gaps;
  }

  @Override
  public Optional<Path> pictureToOpen(Optional<Path> near) {
    return picture;
  }

  @Override
  public Optional<Path> planToSave(Path suggested) {
    return save;
  }

  @Override
  public Optional<PacketChoice> packet(PacketChoice first) {
    return folder.map(f -> new PacketChoice(f, first.request()));
  }

  @Override
  public Optional<Path> sheetToWrite(Path suggested, List<String> endings) {
    return sheet;
  }

  @Override
  public boolean print(PrinterJob job, PrintRequestAttributeSet wanted) {
    return printing.test(job, wanted);
  }

  @Override
  public boolean printSmaller(String printer) {
    asked++;
    return smaller;
  }

  @Override
  public Unsaved unsaved(String title) {
    asked++;
    return unsaved;
  }

  @Override
  public LeftDraft leftDraft(String title) {
    return leftDraft;
  }

  @Override
  public void tell(String title, String words) {
    told = title + ": " + words;
  }
}
