package longpoint.desktop;

import java.nio.file.Path;
import java.util.function.Consumer;
import javax.swing.JMenu;
import javax.swing.JMenuItem;

/** The plans opened or saved lately, latest first. */
final class RecentMenu {
  private final JMenu menu = new JMenu(Texts.of("menu.recent"));
  private final Settings settings;
  private final Consumer<Path> open;

  RecentMenu(Settings settings, Consumer<Path> open) {
    this.settings = settings;
    this.open = open;
    menu.setName("menu.recent");
    list();
  }

  JMenu menu() {
    return menu;
  }

  /** Lists them anew. */
  void list() {
    menu.removeAll();
    for (Path plan : settings.recent()) {
      JMenuItem item = new JMenuItem(plan.getFileName().toString());
      item.setToolTipText(plan.toString());
      item.addActionListener(e -> open.accept(plan));
      menu.add(item);
    }
    menu.setEnabled(menu.getItemCount() > 0);
  }
}
