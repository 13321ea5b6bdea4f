package longpoint.desktop.action;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import longpoint.desktop.Texts;

/** What goes together in a menu: rules between groups, and menus of their own for long ones. */
final class MenuGroups {
  /** Tasks that begin a group. */
  private static final Set<String> BEGINS =
      Set.of(
          "file.save",
          "file.packet",
          "file.quit",
          "edit.copy",
          "edit.delete",
          "edit.eave",
          "edit.left",
          "tool.corner",
          "tool.move",
          "tool.measure",
          "picture.pick",
          "view.problem",
          "view.units",
          "view.theme",
          "beside.house",
          "beside.below",
          "help.about");

  /** Beginnings of the ids of tasks that have a menu of their own inside, with its title's key. */
  private static final Map<String, String> INSIDE =
      Map.of("sheets.", "menu.sheets", "solid.", "menu.house");

  private MenuGroups() {}

  /** Fills a menu with the items of tasks, in their order. */
  static void fill(JMenu menu, List<Task> tasks, Function<Task, JMenuItem> item) {
    Map<String, JMenu> inside = new HashMap<>();
    for (Task task : tasks) {
      if (BEGINS.contains(task.id()) && menu.getItemCount() > 0) {
        menu.addSeparator();
      }
      INSIDE.keySet().stream()
          .filter(task.id()::startsWith)
          .findFirst()
          .map(start -> inside.computeIfAbsent(start, s -> inside(menu, INSIDE.get(s))))
          .orElse(menu)
          .add(item.apply(task));
    }
    inside.values().forEach(m -> Mnemonics.give(items(m)));
    Mnemonics.give(items(menu));
  }

  private static JMenu inside(JMenu menu, String title) {
    JMenu inside = new JMenu(Texts.of(title));
    inside.setName(title);
    if (menu.getItem(menu.getItemCount() - 1) != null
        && !(menu.getItem(menu.getItemCount() - 1) instanceof JMenu)) {
      menu.addSeparator();
    }
    menu.add(inside);
    return inside;
  }

  /** Puts a menu that is not made of tasks among the items. */
  static void insert(JMenu menu, JMenu extra, int at) {
    menu.insert(extra, at);
    Mnemonics.give(items(menu));
  }

  /** Letters for the titles in the bar. */
  static void letter(JMenuBar bar) {
    Mnemonics.give(IntStream.range(0, bar.getMenuCount()).mapToObj(bar::getMenu).toList());
  }

  /** Every item but the rules. */
  private static List<JMenuItem> items(JMenu menu) {
    return IntStream.range(0, menu.getItemCount())
        .mapToObj(menu::getItem)
        .filter(Objects::nonNull)
        .toList();
  }
}
