package longpoint.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import longpoint.desktop.action.Task;
import longpoint.desktop.solid.SolidLayer;
import longpoint.desktop.solid.Stand;
import longpoint.desktop.view.SheetsView;
import longpoint.desktop.view.Showing;

/** The chapter of the catalogue on the views beside the plan. */
final class BesideTasks {
  private static final double ZOOM = 1.25;

  private final MainWindow window;

  BesideTasks(MainWindow window) {
    this.window = window;
  }

  private Beside beside() {
    return window.beside();
  }

  List<Task> all() {
    List<Task> all = new ArrayList<>();
    all.add(
        Task.of("beside.turn", () -> beside().turnOver())
            .letter('v')
            .shows(() -> beside().isShown()));
    all.add(view("beside.house", Showing.HOUSE).key("F5"));
    all.add(view("beside.outline", Showing.OUTLINE).key("F6"));
    all.add(view("beside.flat", Showing.FLAT).key("F7"));
    all.add(view("beside.sheets", Showing.SHEETS).key("F8"));
    all.add(view("beside.lists", Showing.LISTS).key("F9"));
    all.add(
        Task.of("beside.below", () -> beside().turnBelow())
            .key("menu shift B")
            .when(() -> beside().isShown() && !beside().isWide())
            .shows(() -> beside().isBelow()));
    all.add(
        Task.of("beside.wide", () -> beside().widen())
            .key("menu B")
            .when(() -> beside().isShown())
            .shows(() -> beside().isWide()));
    all.add(
        Task.of("beside.before", () -> beside().step(-1))
            .key("menu PAGE_UP")
            .when(() -> beside().isShown()));
    all.add(
        Task.of("beside.after", () -> beside().step(1))
            .key("menu PAGE_DOWN")
            .when(() -> beside().isShown()));
    all.add(
        Task.of("beside.copy", () -> window.outgoing().copyBeside())
            .when(() -> beside().isShown()));
    all.addAll(sheets());
    all.addAll(house());
    return all;
  }

  private Task view(String id, Showing view) {
    return Task.of(id, () -> beside().choose(view)).shows(() -> beside().shows(view));
  }

  private List<Task> sheets() {
    return List.of(
        sheet("sheets.whole", s -> s.view().fit()),
        sheet("sheets.width", s -> s.view().fitWidth()),
        sheet("sheets.size", s -> s.view().fullSize()),
        sheet("sheets.nearer", s -> s.view().zoom(ZOOM)),
        sheet("sheets.farther", s -> s.view().zoom(1 / ZOOM)));
  }

  private Task sheet(String id, Consumer<SheetsView> work) {
    return Task.of(id, () -> beside().sheets().ifPresent(work))
        .when(() -> beside().shows(Showing.SHEETS));
  }

  private List<Task> house() {
    return List.of(
        layer("solid.show.roof", SolidLayer.ROOF),
        layer("solid.show.walls", SolidLayer.WALLS),
        layer("solid.show.frame", SolidLayer.FRAME),
        layer("solid.show.deck", SolidLayer.DECK),
        Task.of("solid.parts", () -> beside().house(h -> h.chooseParts()))
            .when(() -> beside().shows(Showing.HOUSE)),
        from("solid.from.plan", Stand.Named.PLAN).key("alt 1"),
        from("solid.from.front", Stand.Named.FRONT).key("alt 2"),
        from("solid.from.right", Stand.Named.RIGHT).key("alt 3"),
        from("solid.from.back", Stand.Named.BACK).key("alt 4"),
        from("solid.from.left", Stand.Named.LEFT).key("alt 5"),
        from("solid.from.corner", Stand.Named.CORNER).key("alt 6"));
  }

  private Task layer(String id, SolidLayer layer) {
    return Task.of(id, () -> beside().house(h -> h.turnOver(layer)))
        .when(() -> beside().shows(Showing.HOUSE))
        .shows(() -> beside().house().filter(h -> h.shows(layer)).isPresent());
  }

  private Task from(String id, Stand.Named stand) {
    return Task.of(id, () -> beside().house(h -> h.look(stand)))
        .when(() -> beside().shows(Showing.HOUSE));
  }
}
