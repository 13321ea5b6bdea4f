package longpoint.desktop.action;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import longpoint.desktop.Texts;
import net.miginfocom.swing.MigLayout;

/**
 * Finds anything the window can do by a few letters of its name, and shows its key: with nothing
 * typed it is the page of keys. Enter does it, arrows choose, Escape goes.
 */
public final class Finder {
  private final Catalogue catalogue;
  private final JDialog dialog;
  private final JTextField field = new JTextField();
  private final DefaultListModel<Task> model = new DefaultListModel<>();
  private final JList<Task> list = new JList<>(model);

  public Finder(Window owner, Catalogue catalogue) {
    this.catalogue = catalogue;
    dialog = new JDialog(owner);
    dialog.setName("finder");
    dialog.setUndecorated(true);
    JPanel pane = new JPanel(new BorderLayout(0, 6));
    pane.setBorder(BorderFactory.createEmptyBorder(12, 12, 12, 12));
    field.setName("finder.field");
    field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, Texts.of("finder.ask"));
    field.getAccessibleContext().setAccessibleName(Texts.of("finder.ask"));
    list.setName("finder.list");
    list.setCellRenderer(new Row());
    pane.add(field, BorderLayout.NORTH);
    JScrollPane scroll = new JScrollPane(list);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    pane.add(scroll, BorderLayout.CENTER);
    dialog.setContentPane(pane);
    listen();
  }

  private void listen() {
    field
        .getDocument()
        .addDocumentListener(
            new DocumentListener() {
              @Override
              public void insertUpdate(DocumentEvent e) {
                search();
              }

              @Override
              public void removeUpdate(DocumentEvent e) {
                search();
              }

              @Override
              public void changedUpdate(DocumentEvent e) {
                search();
              }
            });
    on(KeyEvent.VK_DOWN, () -> step(1));
    on(KeyEvent.VK_UP, () -> step(-1));
    on(KeyEvent.VK_PAGE_DOWN, () -> step(8));
    on(KeyEvent.VK_PAGE_UP, () -> step(-8));
    on(KeyEvent.VK_ENTER, this::perform);
    on(KeyEvent.VK_ESCAPE, this::close);
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            perform();
          }
        });
    dialog.addWindowFocusListener(
        new WindowAdapter() {
          @Override
          public void windowLostFocus(WindowEvent e) {
            close();
          }
        });
  }

  private void on(int key, Runnable work) {
    String name = "finder" + key;
    dialog
        .getRootPane()
        .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
        .put(KeyStroke.getKeyStroke(key, 0), name);
    field.getInputMap().put(KeyStroke.getKeyStroke(key, 0), name);
    AbstractAction action =
        new AbstractAction() {
          private static final long serialVersionUID = 1;

          @Override
          public void actionPerformed(ActionEvent e) {
            work.run();
          }
        };
    dialog.getRootPane().getActionMap().put(name, action);
    field.getActionMap().put(name, action);
  }

  /** Opens over the upper part of its owner. */
  public void open() {
    field.setText("");
    search();
    Window owner = dialog.getOwner();
    int width = Math.min(680, owner.getWidth() - 60);
    dialog
        .getRootPane()
        .setBorder(BorderFactory.createLineBorder(UIManager.getColor("Component.borderColor"), 1));
    SwingUtilities.updateComponentTreeUI(dialog);
    dialog.setSize(width, Math.min(560, owner.getHeight() - 120));
    dialog.setLocation(owner.getX() + (owner.getWidth() - width) / 2, owner.getY() + 70);
    dialog.setVisible(true);
    field.requestFocusInWindow();
  }

  private void search() {
    model.clear();
    model.addAll(catalogue.matching(field.getText()));
    list.setSelectedIndex(model.isEmpty() ? -1 : 0);
    list.ensureIndexIsVisible(0);
  }

  private void step(int by) {
    if (!model.isEmpty()) {
      int to = Math.max(0, Math.min(model.size() - 1, list.getSelectedIndex() + by));
      list.setSelectedIndex(to);
      list.ensureIndexIsVisible(to);
    }
  }

  private void perform() {
    Task task = list.getSelectedValue();
    close();
    if (task != null) {
      task.perform();
    }
  }

  private void close() {
    dialog.setVisible(false);
  }

  /** Paints a task: its name, what it does, its key. */
  private static final class Row extends JPanel implements ListCellRenderer<Task> {
    private static final long serialVersionUID = 1;
    private final JLabel name = new JLabel();
    private final JLabel tip = new JLabel();
    private final JLabel key = new JLabel();

    Row() {
      super(new MigLayout("insets 5 10 5 10, fillx, gap 12 0", "[grow,0:0:][right]"));
      add(name, "growx, wmin 0");
      add(key, "spany 2, wrap");
      add(tip, "growx, wmin 0");
    }

    @Override
    public Component getListCellRendererComponent(
        JList<? extends Task> list, Task task, int index, boolean chosen, boolean focus) {
      boolean can = task.enabled().getAsBoolean();
      setBackground(chosen ? list.getSelectionBackground() : list.getBackground());
      name.setText(task.name().get());
      tip.setText(task.tip().get());
      key.setText(task.keyText());
      tip.setFont(list.getFont().deriveFont(list.getFont().getSize2D() - 2));
      key.setFont(list.getFont().deriveFont(java.awt.Font.BOLD));
      java.awt.Color plain = chosen ? list.getSelectionForeground() : list.getForeground();
      java.awt.Color quiet =
          chosen ? list.getSelectionForeground() : UIManager.getColor("Longpoint.quiet");
      name.setForeground(can ? plain : quiet);
      tip.setForeground(quiet);
      key.setForeground(quiet);
      getAccessibleContext().setAccessibleName(name.getText() + " " + key.getText());
      return this;
    }
  }
}
