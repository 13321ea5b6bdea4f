package longpoint.desktop.file;

import java.awt.Component;
import java.awt.print.PrinterJob;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileFilter;
import javax.swing.filechooser.FileNameExtensionFilter;
import longpoint.desktop.Texts;
import longpoint.desktop.file.Question.Answer;
import longpoint.tracing.CadDrawing;
import longpoint.tracing.Traced;
import longpoint.trusslist.Column;
import longpoint.units.LengthUnit;

/** Asks with windows of its own; none of them is the system's, so all look and work the same. */
public final class SwingDialogs implements Dialogs {
  private final Component over;

  /**
   * @param over the window the questions stand over
   */
  public SwingDialogs(Component over) {
    this.over = over;
  }

  @Override
  public Optional<Path> planToOpen(Optional<Path> near) {
    JFileChooser chooser = chooser(near, "file.kind.opened", "json", "svg");
    return chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION
        ? Optional.of(chooser.getSelectedFile().toPath())
        : Optional.empty();
  }

  @Override
  public Optional<Path> drawingToOpen(Optional<Path> near) {
    JFileChooser chooser = chooser(near, "file.kind.drawing", "dxf");
    return chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION
        ? Optional.of(chooser.getSelectedFile().toPath())
        : Optional.empty();
  }

  @Override
  public Optional<Path> listToOpen(Optional<Path> near) {
    JFileChooser chooser = chooser(near, "file.kind.list", "csv", "tsv", "txt");
    return chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION
        ? Optional.of(chooser.getSelectedFile().toPath())
        : Optional.empty();
  }

  @Override
  public Optional<Map<Column, Integer>> listColumns(
      List<String> heads, Map<Column, Integer> known) {
    ListColumns form = new ListColumns(heads, known);
    int answer =
        JOptionPane.showConfirmDialog(
            over,
            form,
            Texts.of("columns.title"),
            JOptionPane.OK_CANCEL_OPTION,
            JOptionPane.PLAIN_MESSAGE);
    return answer == JOptionPane.OK_OPTION ? Optional.of(form.chosen()) : Optional.empty();
  }

  @Override
  public Optional<TracingFlow.Choice> howToTrace(CadDrawing drawing) {
    return TracingDialog.ask(over, drawing);
  }

  @Override
  public Optional<Traced.Gaps> gaps(Traced traced, LengthUnit unit) {
    return TracingDialog.gaps(over, traced, unit);
  }

  @Override
  public Optional<Path> pictureToOpen(Optional<Path> near) {
    JFileChooser chooser = chooser(near, "file.kind.picture", "png", "jpg", "jpeg", "pdf");
    return chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION
        ? Optional.of(chooser.getSelectedFile().toPath())
        : Optional.empty();
  }

  @Override
  public Optional<Path> planToSave(Path suggested) {
    JFileChooser chooser = chooser(Optional.of(suggested), "file.kind", "json");
    chooser.setSelectedFile(suggested.toFile());
    while (chooser.showSaveDialog(over) == JFileChooser.APPROVE_OPTION) {
      Path path = named(chooser.getSelectedFile().toPath());
      if (!Files.exists(path) || mayReplace(path)) {
        return Optional.of(path);
      }
    }
    return Optional.empty();
  }

  private static Path named(Path path) {
    String name = path.getFileName().toString();
    return name.contains(".") ? path : path.resolveSibling(name + ".json");
  }

  private boolean mayReplace(Path path) {
    return "replace"
        .equals(
            Question.ask(
                over,
                Texts.of("ask.replace"),
                Texts.of("ask.replace.words", path.getFileName()),
                List.of(
                    new Answer("replace", Texts.of("ask.replace.yes")),
                    new Answer("other", Texts.of("ask.replace.no")))));
  }

  @Override
  public Optional<PacketChoice> packet(PacketChoice first) {
    JFileChooser chooser = new JFileChooser(existing(first.folder()));
    PacketForm form = new PacketForm(first.request());
    chooser.setAccessory(form);
    chooser.setName("chooser");
    chooser.setDialogTitle(Texts.of("task.file.packet"));
    // Where folders alone may be chosen, one that is yet to be made is not offered by its name.
    chooser.setFileSelectionMode(JFileChooser.FILES_AND_DIRECTORIES);
    chooser.setAcceptAllFileFilterUsed(false);
    chooser.setFileFilter(new Folders());
    chooser.setSelectedFile(first.folder().toFile());
    return chooser.showDialog(over, Texts.of("ask.packet.here")) == JFileChooser.APPROVE_OPTION
        ? Optional.of(new PacketChoice(chooser.getSelectedFile().toPath(), form.request()))
        : Optional.empty();
  }

  @Override
  public Optional<Path> sheetToWrite(Path suggested, List<String> endings) {
    JFileChooser chooser =
        chooser(Optional.of(suggested), "file.kind.sheet", endings.toArray(String[]::new));
    chooser.setDialogTitle(Texts.of("task.file.sheet"));
    chooser.setSelectedFile(suggested.toFile());
    while (chooser.showSaveDialog(over) == JFileChooser.APPROVE_OPTION) {
      Path path = named(chooser.getSelectedFile().toPath(), endings);
      if (!Files.exists(path) || mayReplace(path)) {
        return Optional.of(path);
      }
    }
    return Optional.empty();
  }

  /** A name that ends in none of the kinds is of the first. */
  private static Path named(Path path, List<String> endings) {
    String name = path.getFileName().toString();
    boolean known = endings.stream().anyMatch(e -> name.toLowerCase(Locale.ROOT).endsWith("." + e));
    return known ? path : path.resolveSibling(name + "." + endings.get(0));
  }

  @Override
  public boolean print(PrinterJob job, PrintRequestAttributeSet wanted) {
    return job.printDialog(wanted);
  }

  @Override
  public boolean printSmaller(String printer) {
    return "print"
        .equals(
            Question.ask(
                over,
                Texts.of("ask.smaller"),
                Texts.of("ask.smaller.words", printer),
                List.of(
                    new Answer("print", Texts.of("ask.smaller.yes")),
                    new Answer("stay", Texts.of("ask.unsaved.stay")))));
  }

  private static JFileChooser chooser(Optional<Path> near, String kind, String... endings) {
    JFileChooser chooser = new JFileChooser(near.map(SwingDialogs::existing).orElse(null));
    chooser.setName("chooser");
    chooser.setFileFilter(new FileNameExtensionFilter(Texts.of(kind), endings));
    return chooser;
  }

  /** The nearest folder around a path that is there. */
  private static File existing(Path path) {
    Path at = path.toAbsolutePath();
    while (at != null && !Files.isDirectory(at)) {
      at = at.getParent();
    }
    return at == null ? null : at.toFile();
  }

  @Override
  public Unsaved unsaved(String title) {
    String answer =
        Question.ask(
            over,
            Texts.of("ask.unsaved"),
            Texts.of("ask.unsaved.words", title),
            List.of(
                new Answer("save", Texts.of("ask.unsaved.save")),
                new Answer("discard", Texts.of("ask.unsaved.discard")),
                new Answer("stay", Texts.of("ask.unsaved.stay"))));
    return switch (answer) {
      case "save" -> Unsaved.SAVE;
      case "discard" -> Unsaved.DISCARD;
      default -> Unsaved.STAY;
    };
  }

  @Override
  public LeftDraft leftDraft(String title) {
    String answer =
        Question.ask(
            over,
            Texts.of("ask.draft"),
            Texts.of("ask.draft.words", title.isBlank() ? Texts.of("app.untitled") : title),
            List.of(
                new Answer("open", Texts.of("ask.draft.open")),
                new Answer("forget", Texts.of("ask.draft.forget")),
                new Answer("later", Texts.of("ask.draft.later"))));
    return switch (answer) {
      case "open" -> LeftDraft.OPEN;
      case "forget" -> LeftDraft.FORGET;
      default -> LeftDraft.LATER;
    };
  }

  @Override
  public void tell(String title, String words) {
    Question.ask(over, title, words, List.of(new Answer("ok", Texts.of("ask.ok"))));
  }

  /** Shows folders only. */
  private static final class Folders extends FileFilter {
    @Override
    public boolean accept(File file) {
      return file.isDirectory();
    }

    @Override
    public String getDescription() {
      return Texts.of("file.kind.folder");
    }
  }
}
