package longpoint.desktop.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.datatransfer.Transferable;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import javax.swing.table.TableRowSorter;
import longpoint.desktop.Engine;
import longpoint.desktop.Job;
import longpoint.desktop.Picks;
import longpoint.desktop.Texts;
import longpoint.desktop.action.Task;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.desktop.panel.Words;
import longpoint.desktop.paper.SheetCopy;
import longpoint.packet.FiguresText;
import longpoint.packet.Listing;
import longpoint.pipeline.Design;

/**
 * Every table of figures, one at a time: sorted by a click on a head, picked row by row, and copied
 * for a spreadsheet with its heads.
 */
public final class ListsView implements BesideView {
  private static final int PAD = 18;
  private static final int WIDEST = 340;

  private final Job job;
  private final Picks picks;
  private final Strip strip = new Strip("lists");
  private final JComboBox<String> chooser = new JComboBox<>();
  private final JTable table = new JTable();
  private final Words notes = new Words(Words.Rank.QUIET, "");
  private final JPanel pane = new JPanel(new BorderLayout());
  private final Engine<Design, Answer> engine;
  private List<Listing> listings = List.of();
  private Optional<Design> made = Optional.empty();
  private boolean filling;

  private record Answer(Design design, List<Listing> listings) {}

  /**
   * @param steps tasks that go to the list before and the one after
   * @param copy the task that copies
   */
  ListsView(Job job, Picks picks, List<Task> steps, Task copy) {
    this.job = job;
    this.picks = picks;
    engine =
        new Engine<>(
            d -> new Answer(d, FiguresText.listings(d.spoken(Texts.language()))),
            this::arrived,
            Engine::bug);
    chooser.setName("lists.chooser");
    chooser.getAccessibleContext().setAccessibleName(Texts.of("task.beside.lists"));
    chooser.setToolTipText(Texts.of("task.beside.lists.tip"));
    chooser.addActionListener(
        e -> {
          if (!filling) {
            show();
          }
        });
    table.setName("lists");
    table.getAccessibleContext().setAccessibleName(Texts.of("task.beside.lists"));
    table.getAccessibleContext().setAccessibleDescription(Texts.of("panel.lists.keys"));
    table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
    table.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
    table.setFillsViewportHeight(true);
    table.getTableHeader().setReorderingAllowed(false);
    table.getSelectionModel().addListSelectionListener(e -> rowsPicked(e.getValueIsAdjusting()));
    copyKey();
    strip.picture(steps.get(0), "");
    strip.picture(steps.get(1), "");
    strip.add(chooser, "growx, pushx, wmin 80, gapleft 6");
    strip.picture(copy, "");
    JScrollPane scroll = new JScrollPane(table);
    WindowKeys.leave(table, steps);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    notes.setBorder(BorderFactory.createEmptyBorder(6, 12, 8, 12));
    notes.setName("lists.notes");
    pane.add(strip, BorderLayout.NORTH);
    pane.add(scroll, BorderLayout.CENTER);
    pane.add(notes, BorderLayout.SOUTH);
  }

  private void copyKey() {
    AbstractAction copy =
        new AbstractAction() {
          private static final long serialVersionUID = 1;

          @Override
          public void actionPerformed(ActionEvent e) {
            table.getToolkit().getSystemClipboard().setContents(copied(), null);
          }
        };
    int menu = java.awt.Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    table
        .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
        .put(KeyStroke.getKeyStroke(KeyEvent.VK_C, menu), "copy");
    table.getActionMap().put("copy", copy);
  }

  @Override
  public JComponent component() {
    return pane;
  }

  @Override
  public JComponent heart() {
    return table;
  }

  @Override
  public void follow() {
    Design design = job.picture().design();
    // A sketch lacks half the lists: the last ones stay until it is worked out.
    boolean late = job.isSketch() && !listings.isEmpty();
    if (!late && made.filter(d -> d == design).isEmpty()) {
      made = Optional.of(design);
      engine.ask(design);
    }
  }

  private void arrived(Answer answer) {
    if (made.filter(d -> d == answer.design()).isEmpty()) {
      return;
    }
    Object kept = chooser.getSelectedItem();
    int before = chooser.getSelectedIndex();
    listings = answer.listings();
    filling = true;
    chooser.setModel(
        new DefaultComboBoxModel<>(
            listings.stream().map(l -> l.table().title()).toArray(String[]::new)));
    chooser.setSelectedItem(kept);
    if (chooser.getSelectedIndex() < 0 && !listings.isEmpty()) {
      chooser.setSelectedIndex(Math.max(0, Math.min(before, listings.size() - 1)));
    }
    filling = false;
    show();
  }

  private Optional<Listing> shown() {
    int at = chooser.getSelectedIndex();
    return at < 0 || at >= listings.size() ? Optional.empty() : Optional.of(listings.get(at));
  }

  private void show() {
    Listing listing = shown().orElse(NONE);
    filling = true;
    RowsModel model = new RowsModel(listing.table());
    table.setModel(model);
    TableRowSorter<RowsModel> sorter = new TableRowSorter<>(model);
    CellOrder order = new CellOrder(job.document().plan().unit());
    for (int i = 0; i < model.getColumnCount(); i++) {
      sorter.setComparator(i, order);
      fit(i);
    }
    table.setRowSorter(sorter);
    notes.setText(longpoint.desktop.panel.Html.lines(String.join("\n", listing.table().notes())));
    notes.setVisible(!listing.table().notes().isEmpty());
    filling = false;
    showPicks();
  }

  private static final Listing NONE =
      new Listing(new longpoint.export.Table("", List.of(""), List.of(), List.of()), List.of());

  /** As wide as what stands in it; figures line up on the right. */
  private void fit(int column) {
    TableColumn of = table.getColumnModel().getColumn(column);
    Cells cells = new Cells(isFigures(column) ? SwingConstants.RIGHT : SwingConstants.LEFT);
    of.setCellRenderer(cells);
    TableCellRenderer heads = table.getTableHeader().getDefaultRenderer();
    of.setHeaderRenderer((t, v, chosen, focus, row, col) -> cells.head(heads, t, v, col));
    int width = width(of.getHeaderRenderer(), of.getHeaderValue(), -1, column);
    for (int row = 0; row < table.getModel().getRowCount(); row++) {
      width = Math.max(width, width(cells, table.getModel().getValueAt(row, column), row, column));
    }
    of.setPreferredWidth(Math.min(WIDEST, width + PAD));
  }

  /** Words to the left, figures to the right, the head as what stands under it. */
  private static final class Cells extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1;
    private static final int SIDE = 6;

    Cells(int alignment) {
      setHorizontalAlignment(alignment);
    }

    Component head(TableCellRenderer usual, JTable table, Object value, int column) {
      Component head = usual.getTableCellRendererComponent(table, value, false, false, -1, column);
      if (head instanceof JLabel label) {
        label.setHorizontalAlignment(getHorizontalAlignment());
        label.setHorizontalTextPosition(SwingConstants.LEADING);
      }
      return head;
    }

    @Override
    public Component getTableCellRendererComponent(
        JTable table, Object value, boolean chosen, boolean focus, int row, int column) {
      super.getTableCellRendererComponent(table, value, chosen, focus, row, column);
      setBorder(BorderFactory.createEmptyBorder(0, SIDE, 0, SIDE));
      return this;
    }
  }

  /** Whether most of a column begins with a figure. */
  private boolean isFigures(int column) {
    int rows = table.getModel().getRowCount();
    long words =
        IntStream.range(0, rows)
            .mapToObj(row -> String.valueOf(table.getModel().getValueAt(row, column)))
            .filter(cell -> !cell.isEmpty() && Character.isLetter(cell.charAt(0)))
            .count();
    return words * 2 < rows;
  }

  private int width(TableCellRenderer renderer, Object value, int row, int column) {
    Component cell =
        renderer.getTableCellRendererComponent(table, value, false, false, row, column);
    return cell.getPreferredSize().width;
  }

  private void rowsPicked(boolean adjusting) {
    if (filling || adjusting) {
      return;
    }
    List<String> subjects = new ArrayList<>();
    for (int row : table.getSelectedRows()) {
      subjects.add(subject(row));
    }
    subjects.removeIf(String::isEmpty);
    if (!subjects.isEmpty()) {
      filling = true;
      picks.pickAll(subjects);
      filling = false;
    }
  }

  private String subject(int row) {
    return shown().map(l -> l.subjects().get(table.convertRowIndexToModel(row))).orElse("");
  }

  @Override
  public void showPicks() {
    if (filling) {
      return;
    }
    Set<String> named = picks.named();
    filling = true;
    ListSelectionModel rows = table.getSelectionModel();
    rows.setValueIsAdjusting(true);
    rows.clearSelection();
    int first = -1;
    for (int row = 0; row < table.getRowCount(); row++) {
      if (named.contains(subject(row))) {
        rows.addSelectionInterval(row, row);
        first = first < 0 ? row : first;
      }
    }
    rows.setValueIsAdjusting(false);
    if (first >= 0) {
      table.scrollRectToVisible(table.getCellRect(first, 0, true));
    }
    filling = false;
  }

  @Override
  public Optional<Transferable> copied(SheetCopy.As as) {
    return Optional.of(copied());
  }

  /** The rows picked, or all of them, as they are sorted, with their heads. */
  public ListCopy copied() {
    int[] rows = table.getSelectedRows();
    int[] all = rows.length > 0 ? rows : IntStream.range(0, table.getRowCount()).toArray();
    List<List<String>> lines = new ArrayList<>();
    for (int row : all) {
      lines.add(
          IntStream.range(0, table.getColumnCount())
              .mapToObj(i -> String.valueOf(table.getValueAt(row, i)))
              .toList());
    }
    return new ListCopy(shown().orElse(NONE).table().heads(), lines);
  }

  @Override
  public void refresh() {
    strip.refresh();
  }

  @Override
  public void startOver() {
    made = Optional.empty();
    listings = List.of();
  }

  @Override
  public void dress(CanvasColours colours, double lettering) {
    int high = table.getFontMetrics(table.getFont()).getHeight();
    table.setRowHeight(high + 9);
    if (!filling) {
      show();
    }
  }

  @Override
  public void step(int by) {
    int to = chooser.getSelectedIndex() + by;
    if (to >= 0 && to < chooser.getItemCount()) {
      chooser.setSelectedIndex(to);
    }
  }

  @Override
  public void close() {
    engine.close();
  }
}
