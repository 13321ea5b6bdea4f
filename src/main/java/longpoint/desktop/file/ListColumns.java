package longpoint.desktop.file;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import longpoint.desktop.Texts;
import longpoint.trusslist.Column;
import net.miginfocom.swing.MigLayout;

/** Asks which column of a supplier's list holds what. */
final class ListColumns extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int LONGEST = 30;

  private final transient Map<Column, JComboBox<String>> boxes = new EnumMap<>(Column.class);

  /**
   * @param heads of the list from the left, or what stands in its first row
   * @param known columns that were understood, from 0
   */
  ListColumns(List<String> heads, Map<Column, Integer> known) {
    super(new MigLayout("insets 0, gapx 12, gapy 5, wrap 2", "[right][grow,fill]"));
    add(new JLabel(Texts.of("columns.ask")), "span 2, alignx left, gapbottom 6");
    List<String> choices = new ArrayList<>(List.of(Texts.of("columns.none")));
    for (int i = 0; i < heads.size(); i++) {
      String head = heads.get(i).strip();
      String shown = head.length() > LONGEST ? head.substring(0, LONGEST) + "…" : head;
      choices.add(Texts.of("columns.choice", i + 1, shown));
    }
    for (Column column : Column.values()) {
      String name = column.words().in(Texts.language());
      JComboBox<String> box = new JComboBox<>(choices.toArray(String[]::new));
      box.setName("column." + column.key());
      box.getAccessibleContext().setAccessibleName(name);
      Integer place = known.get(column);
      box.setSelectedIndex(place == null || place >= heads.size() ? 0 : place + 1);
      JLabel label = new JLabel(name);
      label.setLabelFor(box);
      add(label);
      add(box);
      boxes.put(column, box);
    }
  }

  /** What was chosen, from 0. */
  Map<Column, Integer> chosen() {
    Map<Column, Integer> chosen = new EnumMap<>(Column.class);
    boxes.forEach(
        (column, box) -> {
          if (box.getSelectedIndex() > 0) {
            chosen.put(column, box.getSelectedIndex() - 1);
          }
        });
    return chosen;
  }
}
