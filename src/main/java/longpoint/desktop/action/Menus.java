package longpoint.desktop.action;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import longpoint.desktop.Texts;

/** One menu for each chapter of the catalogue: its title first, what can be done in it later. */
public final class Menus {
  private final List<TaskAction> actions = new ArrayList<>();
  private final JMenuBar bar = new JMenuBar();

  /**
   * @param chapters keys of their titles
   */
  public Menus(List<String> chapters) {
    for (String key : chapters) {
      JMenu menu = new JMenu(Texts.of(key));
      menu.setName(key);
      bar.add(menu);
    }
  }

  /** Puts everything that can be done into the menus, and with it onto its keys. */
  public void fill(Catalogue catalogue) {
    catalogue.chapters().forEach((key, tasks) -> MenuGroups.fill(menu(key), tasks, this::item));
    MenuGroups.letter(bar);
  }

  private JMenu menu(String chapter) {
    for (int i = 0; i < bar.getMenuCount(); i++) {
      if (chapter.equals(bar.getMenu(i).getName())) {
        return bar.getMenu(i);
      }
    }
    throw new IllegalArgumentException("no menu " + chapter);
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
    MenuGroups.insert(menu(chapter), menu, at);
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

  private JMenuItem item(Task task) {
    TaskAction action = new TaskAction(task);
    actions.add(action);
    JMenuItem item = task.on().isPresent() ? new JCheckBoxMenuItem(action) : new JMenuItem(action);
    item.setName("menu." + task.id());
    task.second()
        .ifPresent(
            key ->
                item.registerKeyboardAction(
                    e -> task.perform(), key, JComponent.WHEN_IN_FOCUSED_WINDOW));
    return item;
  }
}
