package longpoint.desktop.action;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import longpoint.desktop.Texts;

/** Menus made from the catalogue: one for each chapter. */
public final class Menus {
  private final List<TaskAction> actions = new ArrayList<>();
  private final JMenuBar bar = new JMenuBar();

  public Menus(Catalogue catalogue) {
    catalogue.chapters().forEach(this::chapter);
    MenuGroups.letter(bar);
  }

  public JMenuBar bar() {
    return bar;
  }

  /** Brings every item up to date. */
  public void refresh() {
    actions.forEach(TaskAction::refresh);
  }

  /** Adds a menu that is not made of tasks. */
  public void insert(String chapter, JMenu menu, int at) {
    for (int i = 0; i < bar.getMenuCount(); i++) {
      if (chapter.equals(bar.getMenu(i).getName())) {
        MenuGroups.insert(bar.getMenu(i), menu, at);
      }
    }
  }

  /** A menu for the second button: some tasks that can be done now. */
  public static JPopupMenu popup(Catalogue catalogue, List<String> ids) {
    JPopupMenu menu = new JPopupMenu();
    menu.setName("popup");
    for (String id : ids) {
      Task task = catalogue.task(id);
      if (task.enabled().getAsBoolean()) {
        JMenuItem item = new JMenuItem(new TaskAction(task));
        item.setName("popup." + id);
        menu.add(item);
      }
    }
    return menu;
  }

  private void chapter(String key, List<Task> tasks) {
    JMenu menu = new JMenu(Texts.of(key));
    menu.setName(key);
    MenuGroups.fill(menu, tasks, this::item);
    bar.add(menu);
  }

  private JMenuItem item(Task task) {
    TaskAction action = new TaskAction(task);
    actions.add(action);
    JMenuItem item = task.on().isPresent() ? new JCheckBoxMenuItem(action) : new JMenuItem(action);
    item.setName("menu." + task.id());
    return item;
  }
}
