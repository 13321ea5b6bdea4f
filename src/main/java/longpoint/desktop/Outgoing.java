package longpoint.desktop;

import java.awt.Toolkit;
import java.awt.datatransfer.Transferable;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import longpoint.desktop.file.PacketFlow;
import longpoint.desktop.file.PacketWriter;
import longpoint.desktop.paper.DrawnPage;
import longpoint.desktop.paper.PrintFlow;
import longpoint.desktop.paper.SheetCopy;
import longpoint.desktop.paper.SheetFile;
import longpoint.drawing.Page;
import longpoint.packet.Packet;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.sheets.Paper;
import longpoint.wording.Language;

/** Everything that leaves the window: packet, print, one sheet as a file, the clipboard. */
final class Outgoing {
  private final MainWindow window;
  private final Errands errands;
  private final PacketFlow packets;
  private final PrintFlow prints;

  Outgoing(MainWindow window, PacketWriter writer, Errands errands) {
    this.window = window;
    this.errands = errands;
    packets = new PacketFlow(window.job(), window.settings(), window.dialogs(), writer, errands);
    prints = new PrintFlow(window.dialogs(), errands);
  }

  void packet() {
    packets.packet(planFile());
  }

  private Path planFile() {
    return window.job().file().orElseGet(window.files()::suggested);
  }

  /** Prints sheets; those chosen in the list of sheets are offered first. */
  void print() {
    Plan plan = window.job().document().plan();
    prints.print(
        new PrintFlow.Sheets(
            window.job().title(), paper -> pages(plan, paper), paper(plan), chosen()));
  }

  private Paper paper(Plan plan) {
    return window.settings().paper(plan.unit());
  }

  private static List<Page> pages(Plan plan, Paper paper) {
    return Packet.pages(Pipeline.solve(plan).spokenElse(Texts.language()), paper);
  }

  private List<String> chosen() {
    return window.beside().sheets().stream()
        .flatMap(s -> s.chosen().stream())
        .map(Page::title)
        .toList();
  }

  /** Writes the sheet that is looked at, or the first, to a file of its own. */
  void sheet() {
    Optional<Page> shown = window.beside().sheets().flatMap(s -> s.view().page());
    if (shown.isPresent()) {
      sheet(shown.get());
    } else {
      Plan plan = window.job().document().plan();
      errands.run(
          Texts.of("state.sheets"),
          watch -> pages(plan, paper(plan)),
          pages -> pages.stream().findFirst().ifPresent(this::sheet),
          broken -> window.dialogs().tell(Texts.of("tell.noSheet"), Trouble.words(broken)));
    }
  }

  private void sheet(Page page) {
    String plan = Packet.baseName(planFile().getFileName().toString());
    Path suggested =
        planFile().resolveSibling(plan + "-" + Packet.baseName(page.number()) + ".pdf");
    window
        .dialogs()
        .sheetToWrite(suggested, SheetFile.ENDINGS)
        .ifPresent(file -> write(page, file));
  }

  private void write(Page page, Path file) {
    String title = window.job().title();
    Language language = window.job().document().plan().spokenElse(Texts.language()).language();
    errands.run(
        Texts.of("state.sheet"),
        watch -> {
          SheetFile.write(page, title, language, file);
          return file;
        },
        done -> window.say(Texts.of("state.written", done.getFileName())),
        broken ->
            window
                .dialogs()
                .tell(
                    Texts.of("tell.noSheet"),
                    Texts.of("tell.noSheet.words", file, Trouble.words(broken))));
  }

  /** Puts what the keyboard is in on the clipboard: the view beside the plan, or the plan. */
  void copy(SheetCopy.As as) {
    var copied =
        window.beside().hasKeyboard()
            ? window.beside().copied(as)
            : Optional.<Transferable>of(new SheetCopy(plan(), as));
    copied.ifPresent(this::copy);
  }

  /** Puts the view beside the plan on the clipboard, wherever the keyboard is. */
  void copyBeside() {
    window.beside().copied(SheetCopy.As.PICTURE).ifPresent(this::copy);
  }

  private void copy(Transferable copied) {
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(copied, null);
    window.say(Texts.of("state.copied"));
  }

  /** The plan as it is seen, whole, on paper of its own. */
  Page plan() {
    Picture picture = window.job().picture();
    return DrawnPage.of(
        picture.drawing(),
        picture.unitsPerMm(),
        layer -> window.canvas().isLayerShown(layer.name()));
  }
}
