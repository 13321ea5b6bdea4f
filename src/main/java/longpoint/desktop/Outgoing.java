package longpoint.desktop;

import java.awt.Toolkit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import longpoint.desktop.file.PacketFlow;
import longpoint.desktop.file.PacketWriter;
import longpoint.desktop.paper.DrawnPage;
import longpoint.desktop.paper.PrintFlow;
import longpoint.desktop.paper.SheetCopy;
import longpoint.desktop.paper.SheetFile;
import longpoint.drawing.Page;
import longpoint.packet.Packet;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.surface.RoofMemory;
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
    packets = new PacketFlow(window.job(), window.dialogs(), writer, errands);
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
    withPages(pages -> prints.print(window.job().title(), pages, chosen(pages)));
  }

  private List<Integer> chosen(List<Page> pages) {
    List<String> numbers =
        window.beside().sheets().stream()
            .flatMap(s -> s.chosen().stream())
            .map(Page::number)
            .toList();
    return IntStream.range(0, pages.size())
        .filter(i -> numbers.contains(pages.get(i).number()))
        .mapToObj(i -> i + 1)
        .collect(Collectors.toList());
  }

  /** The sheets of the plan as it stands, laid out off the event thread. */
  private void withPages(java.util.function.Consumer<List<Page>> work) {
    Plan plan = window.job().document().plan();
    errands.run(
        Texts.of("state.sheets"),
        watch -> {
          Design design = Pipeline.solve(plan, new RoofMemory(), watch::stage);
          watch.step(Texts.of("state.sheets"));
          return Packet.pages(design.spokenElse(Texts.language()), Packet.paperFor(plan.unit()));
        },
        work,
        broken -> window.dialogs().tell(Texts.of("tell.noPrint"), String.valueOf(broken)));
  }

  /** Writes the sheet that is looked at, or the first, to a file of its own. */
  void sheet() {
    Optional<Page> shown = window.beside().sheets().flatMap(s -> s.view().page());
    if (shown.isPresent()) {
      sheet(shown.get());
    } else {
      withPages(pages -> pages.stream().findFirst().ifPresent(this::sheet));
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
            : Optional.<java.awt.datatransfer.Transferable>of(new SheetCopy(plan(), as));
    copied.ifPresent(
        c -> {
          Toolkit.getDefaultToolkit().getSystemClipboard().setContents(c, null);
          window.say(Texts.of("state.copied"));
        });
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
