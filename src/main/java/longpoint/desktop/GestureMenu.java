package longpoint.desktop;

import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import longpoint.editor.Event;
import longpoint.editor.ToolRunner;

/** The menu of the second button in the middle of a gesture: how to end it. */
final class GestureMenu {
  private GestureMenu() {}

  static JPopupMenu of(ToolRunner runner) {
    JPopupMenu menu = new JPopupMenu();
    menu.setName("popup");
    menu.add(item("gesture.finish", () -> runner.handle(new Event.Pressing(Event.Key.ENTER))));
    menu.add(item("gesture.back", runner::undo));
    menu.add(item("gesture.drop", () -> runner.choose(runner.tool())));
    return menu;
  }

  private static JMenuItem item(String key, Runnable run) {
    JMenuItem item = new JMenuItem(Texts.of(key));
    item.setName("popup." + key);
    item.setToolTipText(Texts.of(key + ".tip"));
    item.addActionListener(e -> run.run());
    return item;
  }
}
