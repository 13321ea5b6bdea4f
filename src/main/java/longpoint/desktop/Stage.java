package longpoint.desktop;

import java.util.function.Consumer;

/**
 * How the window opens once its {@link FirstSight} has been painted: each stage is one short event,
 * in this order, and after each the window looks finished but for the places still empty.
 */
enum Stage {
  /** Everything that can be done gets into the menus, and onto its keys. */
  MENUS(MainWindow::fillMenus),
  /** The tools down the left edge. */
  TOOLS(MainWindow::setOutTools),
  /** The line over the sheet. */
  HEADER(MainWindow::writeHeader),
  /** Figures and problems for the right edge, not seen yet. */
  FIGURES(MainWindow::setOutSide),
  /** The form above them, and all of that edge. */
  FORM(MainWindow::showSide),
  /** The view that stood beside the sheet last. */
  BESIDE(MainWindow::standBeside),
  /** All of it brought up to date. */
  WHOLE(MainWindow::whole);

  private final Consumer<MainWindow> work;

  Stage(Consumer<MainWindow> work) {
    this.work = work;
  }

  void of(MainWindow window) {
    work.accept(window);
  }
}
