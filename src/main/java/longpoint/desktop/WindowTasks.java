package longpoint.desktop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import longpoint.desktop.action.Catalogue;
import longpoint.desktop.action.KeysPage;
import longpoint.desktop.action.Task;
import longpoint.desktop.panel.LayersPopup;
import longpoint.desktop.paper.SheetCopy;
import longpoint.drawing.Layer;
import longpoint.editor.Command;
import longpoint.editor.Duplicate;
import longpoint.editor.PartCommands;
import longpoint.editor.PlanCommands;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.editor.SideCommands;
import longpoint.editor.ToolRunner;
import longpoint.editor.tools.Tools;
import longpoint.plan.EdgeKind;
import longpoint.plan.Plan;
import longpoint.sheets.FrameLayers;
import longpoint.sheets.Layers;
import longpoint.units.LengthUnit;

/** Writes the catalogue: everything this window can do, with its key. */
final class WindowTasks {
  /** Titles of the menus, by the keys of their chapters. */
  static final List<String> CHAPTERS =
      List.of(
          "menu.file",
          "menu.edit",
          "menu.tools",
          "menu.picture",
          "menu.view",
          "menu.beside",
          "menu.help");

  /** What the second button offers on the sheet, as far as it can be done. */
  static final List<String> ON_SHEET =
      List.of(
          "edit.eave",
          "edit.gable",
          "edit.abutment",
          "edit.open",
          "edit.left",
          "edit.right",
          "edit.mirrorAcross",
          "edit.mirrorUp",
          "edit.duplicate",
          "edit.figures",
          "edit.split",
          "edit.delete",
          "view.fitPicked",
          "edit.all",
          "view.fit",
          "edit.undo",
          "edit.redo");

  private static final List<Layer> LAYERS =
      Stream.concat(
              Layers.ofPlanView().stream(),
              Stream.of(FrameLayers.TRUSS_LINE, FrameLayers.RAFTER_LINE))
          .toList();

  private final MainWindow window;
  private final Beginnings beginnings;

  WindowTasks(MainWindow window) {
    this.window = window;
    beginnings = new Beginnings(() -> window);
  }

  Catalogue catalogue() {
    Map<String, List<Task>> chapters = new LinkedHashMap<>();
    for (String chapter : CHAPTERS) {
      chapters.put(
          chapter,
          switch (chapter) {
            case "menu.file" -> file();
            case "menu.edit" -> edit();
            case "menu.tools" -> Stream.of(Tools.values()).map(beginnings::tool).toList();
            case "menu.picture" -> new PictureTasks(window).all();
            case "menu.view" -> view();
            case "menu.beside" -> new BesideTasks(window).all();
            default -> help();
          });
    }
    return new Catalogue(chapters);
  }

  private ToolRunner runner() {
    return window.job().runner();
  }

  private List<Task> file() {
    return List.of(
        Task.of("file.new.in", () -> window.files().start(LengthUnit.INCH)).key("menu N"),
        beginnings.newMetric(),
        beginnings.open(),
        Task.of("file.save", () -> window.files().save()).key("menu S"),
        Task.of("file.saveAs", () -> window.files().saveAs()).key("menu shift S"),
        Task.of("file.packet", () -> window.outgoing().packet())
            .key("menu E")
            .when(() -> !window.errands().busy()),
        Task.of("file.sheet", () -> window.outgoing().sheet())
            .key("menu shift E")
            .when(() -> !window.errands().busy()),
        Task.of("file.supplied", () -> window.suppliers().load())
            .when(() -> !window.errands().busy() && !plan().parts().isEmpty()),
        Task.of("file.print", () -> window.outgoing().print())
            .key("menu P")
            .when(() -> !window.errands().busy()),
        Task.of("file.quit", window::quit).key("menu Q"));
  }

  private List<Task> edit() {
    return List.of(
        Task.named(
                "edit.undo",
                this::undoName,
                () -> Texts.of("task.edit.undo.tip"),
                () -> runner().undo())
            .key("menu Z")
            .when(this::canUndo),
        Task.named(
                "edit.redo",
                this::redoName,
                () -> Texts.of("task.edit.redo.tip"),
                () -> runner().redo())
            .key("menu shift Z")
            .also("menu Y")
            .when(() -> !runner().engaged() && runner().document().redoName().isPresent()),
        Task.of("edit.copy", () -> window.outgoing().copy(SheetCopy.As.PICTURE)).key("menu C"),
        Task.of("edit.copySvg", () -> window.outgoing().copy(SheetCopy.As.SVG)).key("menu shift C"),
        Task.of("edit.delete", () -> runner().apply(PlanCommands.delete(selection())))
            .when(() -> !selection().isEmpty()),
        Task.of("edit.all", this::pickAll).key("menu A").when(() -> !plan().parts().isEmpty()),
        Task.of("edit.duplicate", this::duplicate).key("menu D").when(() -> !selection().isEmpty()),
        Task.of("edit.figures", () -> window.side().edit())
            .key("F2")
            .when(() -> !selection().isEmpty()),
        Task.of("edit.split", () -> runner().apply(SideCommands.split(plan(), sides().get(0))))
            .when(() -> sides().size() == 1),
        kind("edit.eave", EdgeKind.EAVE).key("menu 1"),
        kind("edit.gable", EdgeKind.GABLE).key("menu 2"),
        kind("edit.abutment", EdgeKind.ABUTMENT).key("menu 3"),
        kind("edit.open", EdgeKind.OPEN).key("menu 4"),
        parts("edit.left", PartCommands::quarterLeft),
        parts("edit.right", PartCommands::quarterRight),
        parts("edit.mirrorAcross", PartCommands::mirrorAcross),
        parts("edit.mirrorUp", PartCommands::mirrorUp));
  }

  /** Sides picked themselves: a whole part's sides are too many to change by one key. */
  private List<Ref.OfSide> sides() {
    return selection().refs().stream()
        .filter(Ref.OfSide.class::isInstance)
        .map(Ref.OfSide.class::cast)
        .toList();
  }

  private Task kind(String id, EdgeKind kind) {
    return Task.of(id, () -> runner().apply(SideCommands.kind(plan(), sides(), kind)))
        .when(() -> !sides().isEmpty());
  }

  private Task parts(String id, BiFunction<Plan, List<String>, Command> command) {
    return Task.of(id, () -> runner().apply(command.apply(plan(), selection().parts())))
        .when(() -> !selection().parts().isEmpty());
  }

  private void duplicate() {
    Duplicate.picked(runner());
    window.sight().showPicked();
  }

  private void pickAll() {
    runner()
        .select(new Selection(plan().parts().stream().<Ref>map(p -> Ref.part(p.id())).toList()));
  }

  private Plan plan() {
    return runner().document().plan();
  }

  private Selection selection() {
    return runner().document().selection();
  }

  private boolean canUndo() {
    return runner().engaged()
        || runner().interrupted()
        || runner().document().undoName().isPresent();
  }

  private String undoName() {
    if (runner().engaged()) {
      return Texts.of("task.edit.undo.step");
    }
    if (runner().interrupted()) {
      return Texts.of("task.edit.undo.left");
    }
    return runner()
        .document()
        .undoName()
        .map(n -> Texts.of("task.edit.undo.named", n))
        .orElse(Texts.of("task.edit.undo"));
  }

  private String redoName() {
    return runner()
        .document()
        .redoName()
        .map(n -> Texts.of("task.edit.redo.named", n))
        .orElse(Texts.of("task.edit.redo"));
  }

  private List<Task> view() {
    return List.of(
        Task.of("view.fit", () -> window.canvas().fit()).key("menu 0").letter('f'),
        Task.of("view.solve", window::goOnAgain).when(() -> window.job().isCalledOff()),
        Task.of("view.fitPicked", () -> window.sight().fitPicked())
            .letter('g')
            .when(() -> !selection().isEmpty()),
        Task.of("view.zoomIn", () -> window.canvas().zoomIn()).key("menu EQUALS").letter('+'),
        Task.of("view.zoomOut", () -> window.canvas().zoomOut()).key("menu MINUS").letter('-'),
        Task.of("view.problem", () -> window.places().next())
            .key("F3")
            .when(() -> !window.places().badges().all().isEmpty()),
        Task.of("view.layers", this::layers).key("menu L"),
        Task.of("view.grid", () -> window.canvas().setGridShown(!window.canvas().isGridShown()))
            .key("menu G")
            .shows(() -> window.canvas().isGridShown()),
        Task.of("view.holds", () -> window.holds().open(window.headerButton("view.holds")))
            .key("menu shift G"),
        Task.of("view.frame", this::showFrame).letter('k').shows(this::frameShown),
        Task.of("view.units", () -> window.side().setDisplay(window.side().display().next()))
            .letter('u'),
        Task.of("view.theme", () -> window.appearance().setTheme(window.settings().theme().other()))
            .key("menu T"),
        Task.of("view.follow", () -> window.appearance().follow(!window.settings().following()))
            .shows(() -> window.settings().following()),
        Task.of(
                "view.larger",
                () -> window.appearance().setTextSize(window.settings().textSize() + 1))
            .key("menu shift EQUALS"),
        Task.of(
                "view.smaller",
                () -> window.appearance().setTextSize(window.settings().textSize() - 1))
            .key("menu shift MINUS"));
  }

  private void layers() {
    LayersPopup.open(window.canvas(), LAYERS, window.headerButton("view.layers"));
  }

  private boolean frameShown() {
    return window.canvas().isLayerShown(FrameLayers.TRUSS_LINE.name());
  }

  private void showFrame() {
    boolean show = !frameShown();
    window.canvas().setLayerShown(FrameLayers.TRUSS_LINE.name(), show);
    window.canvas().setLayerShown(FrameLayers.RAFTER_LINE.name(), show);
  }

  private List<Task> help() {
    return List.of(
        Task.of("help.find", () -> window.finder().open()).key("menu K"),
        Task.of("help.keys", () -> KeysPage.open(window.frame(), window.catalogue())).key("F1"),
        Task.of(
            "help.about",
            () -> window.dialogs().tell(Texts.of("about.title"), Texts.of("about.words"))),
        Task.of(
            "help.licences",
            () ->
                window
                    .dialogs()
                    .tell(Texts.of("licences.title", version()), Texts.of("licences.words"))));
  }

  private static String version() {
    String version = WindowTasks.class.getPackage().getImplementationVersion();
    return version == null ? "" : version;
  }
}
