package longpoint.desktop.panel;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import javax.swing.UIManager;
import longpoint.desktop.Texts;
import net.miginfocom.swing.MigLayout;

/**
 * The figures of the roof, large enough to read at arm's length. The row that is picked is shown on
 * the sheet.
 */
public final class FiguresPanel extends JPanel {
  private static final long serialVersionUID = 1;
  private final DefaultListModel<Figure> model = new DefaultListModel<>();
  private final JList<Figure> list =
      new JList<>(model) {
        private static final long serialVersionUID = 1;

        /** Rows are as wide as the panel: a long name is cut, never a figure. */
        @Override
        public boolean getScrollableTracksViewportWidth() {
          return true;
        }
      };
  private final Words empty = new Words(Words.Rank.QUIET, "");
  private transient List<Figure> shown = List.of();

  /**
   * @param picked told which figure is picked, or that none is
   */
  public FiguresPanel(Consumer<Optional<Figure>> picked) {
    super(new BorderLayout());
    setOpaque(false);
    list.setName("figures");
    list.setOpaque(false);
    list.getAccessibleContext().setAccessibleName(Texts.of("panel.figures"));
    list.getAccessibleContext().setAccessibleDescription(Texts.of("panel.figures.keys"));
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(new Row());
    list.addListSelectionListener(e -> picked.accept(Optional.ofNullable(list.getSelectedValue())));
    JScrollPane scroll = new JScrollPane(list);
    scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setOpaque(false);
    scroll.getViewport().setOpaque(false);
    empty.setBorder(BorderFactory.createEmptyBorder(0, 8, 0, 8));
    add(empty, BorderLayout.NORTH);
    add(scroll, BorderLayout.CENTER);
  }

  /**
   * @param whenNone what is said where there are no figures
   */
  public void show(List<Figure> figures, String whenNone) {
    empty.setText(whenNone);
    if (figures.equals(shown)) {
      return;
    }
    shown = List.copyOf(figures);
    empty.setVisible(figures.isEmpty());
    model.clear();
    model.addAll(figures);
  }

  /** Paints one row. */
  private static final class Row extends JPanel implements ListCellRenderer<Figure> {
    private static final long serialVersionUID = 1;
    private final Words name = new Words(Words.Rank.PLAIN, "");
    private final Words value = new Words(Words.Rank.FIGURE, "");
    private final Lines small = new Lines();

    /** What the height of a row hangs on. */
    private record Kind(boolean heading, boolean ruled, int lines, Font font) {}

    private final transient Map<Kind, Dimension> sizes = new HashMap<>();
    private transient Kind kind;

    private static int count(String words) {
      return (int) words.chars().filter(c -> c == '\n').count();
    }

    Row() {
      super(
          new MigLayout(
              "insets 3 8 4 8, gap 8 0, fillx, hidemode 3", "[0:0:,grow,fill][pref!,right]"));
      add(name, "wmin 0");
      add(value, "wrap");
      add(small, "span 2, wmin 0");
    }

    /** A list asks every row for its height whenever one changes; rows of a kind are alike. */
    @Override
    public Dimension getPreferredSize() {
      return sizes.computeIfAbsent(kind, k -> super.getPreferredSize());
    }

    @Override
    public void updateUI() {
      super.updateUI();
      if (sizes != null) {
        sizes.clear();
      }
    }

    @Override
    public Component getListCellRendererComponent(
        JList<? extends Figure> list, Figure figure, int index, boolean chosen, boolean focus) {
      boolean heading = figure instanceof Figure.Heading;
      int lines = figure.smallPrint().isEmpty() ? 0 : 1 + count(figure.smallPrint());
      kind = new Kind(heading, heading && index > 0, lines, Words.Rank.PLAIN.font());
      name.setFont((heading ? Words.Rank.TITLE : Words.Rank.PLAIN).font());
      name.setForeground((heading ? Words.Rank.QUIET : Words.Rank.PLAIN).colour());
      value.setFont((heading ? Words.Rank.PLAIN : Words.Rank.FIGURE).font());
      value.setForeground((heading ? Words.Rank.QUIET : Words.Rank.PLAIN).colour());
      small.setFont(Words.Rank.QUIET.font());
      small.setForeground(Words.Rank.QUIET.colour());
      name.setText(figure.name());
      setToolTipText(figure.name());
      value.setText(figure.value());
      small.setText(figure.smallPrint());
      small.setVisible(!figure.smallPrint().isEmpty());
      setOpaque(chosen && !heading);
      setBackground(UIManager.getColor("Longpoint.chosen"));
      setBorder(
          BorderFactory.createMatteBorder(
              heading && index > 0 ? 1 : 0, 0, 0, 0, UIManager.getColor("Longpoint.rule")));
      getAccessibleContext()
          .setAccessibleName(figure.name() + " " + figure.value() + " " + figure.smallPrint());
      return this;
    }
  }
}
