package longpoint.desktop.panel;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import javax.swing.UIManager;
import longpoint.desktop.Texts;
import longpoint.plan.Problem;
import net.miginfocom.swing.MigLayout;

/** What is wrong with the plan, worst first. A click leads to the place and to its cures. */
public final class ProblemsPanel extends JPanel {
  private static final long serialVersionUID = 1;
  private final DefaultListModel<Problem> model = new DefaultListModel<>();
  private final JList<Problem> list = new JList<>(model);
  private transient List<Problem> shown = List.of();
  private boolean filling;

  /** The places that problems are about. */
  public interface Places {
    /** Leads to where a problem is. */
    void go(Problem problem);

    /** Says there what can be done about it. */
    void cure(Problem problem);

    /** These are all the problems there are, worst first. */
    void listed(List<Problem> problems);
  }

  public ProblemsPanel(Places places) {
    super(new BorderLayout());
    setOpaque(false);
    list.setName("problems");
    list.setOpaque(false);
    list.getAccessibleContext().setAccessibleName(Texts.of("panel.problems"));
    list.getAccessibleContext().setAccessibleDescription(Texts.of("panel.problems.keys"));
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(new Row());
    list.addListSelectionListener(
        e -> {
          if (!filling && !e.getValueIsAdjusting() && list.getSelectedValue() != null) {
            places.go(list.getSelectedValue());
          }
        });
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            open(places);
          }
        });
    list.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "cure");
    list.getActionMap()
        .put(
            "cure",
            new AbstractAction() {
              private static final long serialVersionUID = 1;

              @Override
              public void actionPerformed(ActionEvent e) {
                open(places);
              }
            });
    JScrollPane scroll = new JScrollPane(list);
    scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setOpaque(false);
    scroll.getViewport().setOpaque(false);
    add(scroll, BorderLayout.CENTER);
  }

  private void open(Places places) {
    if (list.getSelectedValue() != null) {
      places.cure(list.getSelectedValue());
    }
  }

  /** Whether these are the problems shown now. */
  boolean showing(List<Problem> problems) {
    return problems.equals(shown);
  }

  /** Whether these are about the same places, as many and as bad, whatever their words. */
  boolean like(List<Problem> problems) {
    return problems.size() == shown.size()
        && IntStream.range(0, shown.size())
            .allMatch(
                i ->
                    problems.get(i).level() == shown.get(i).level()
                        && problems.get(i).where().equals(shown.get(i).where()));
  }

  public void show(List<Problem> problems) {
    if (problems.equals(shown)) {
      return;
    }
    shown = List.copyOf(problems);
    filling = true;
    model.clear();
    model.addAll(problems);
    filling = false;
  }

  /** Lets the first problem about any of these places stand out; none where nothing is. */
  void about(Set<String> places) {
    filling = true;
    int first =
        IntStream.range(0, shown.size())
            .filter(i -> places.contains(shown.get(i).where()))
            .findFirst()
            .orElse(-1);
    boolean already =
        list.getSelectedValue() != null && places.contains(list.getSelectedValue().where());
    if (first < 0) {
      list.clearSelection();
    } else if (!already) {
      list.setSelectedIndex(first);
      list.ensureIndexIsVisible(first);
    }
    filling = false;
  }

  /** Paints one problem: its weight by a sign and a word's colour, its words, its cure. */
  private static final class Row extends JPanel implements ListCellRenderer<Problem> {
    private static final long serialVersionUID = 1;
    private static final int SIGN = 18;
    private final Words sign = new Words(Words.Rank.PLAIN, "");
    private final Words message = new Words(Words.Rank.PLAIN, "");
    private final Words cure = new Words(Words.Rank.QUIET, "");

    Row() {
      super(new MigLayout("insets 5 8 5 8, gap 8 2, fillx, hidemode 3", "[][grow,fill]"));
      add(sign, "aligny top");
      add(message, "wrap");
      add(cure, "skip");
    }

    @Override
    public Component getListCellRendererComponent(
        JList<? extends Problem> list, Problem problem, int index, boolean chosen, boolean focus) {
      int width = Math.max(120, list.getWidth() - 60);
      sign.setIcon(LineIcon.of("problem." + problem.level(), SIGN));
      sign.setForeground(
          UIManager.getColor(
              switch (problem.level()) {
                case ERROR -> "Longpoint.error";
                case WARNING -> "Longpoint.warning";
                case NOTE -> "Longpoint.quiet";
              }));
      message.setFont(Words.Rank.PLAIN.font());
      message.setForeground(Words.Rank.PLAIN.colour());
      message.setText(Html.wrapped(problem.message(Texts.language()), width));
      cure.setFont(Words.Rank.QUIET.font());
      cure.setForeground(Words.Rank.QUIET.colour());
      cure.setText(Html.wrapped(problem.cure(Texts.language()), width));
      cure.setVisible(!problem.cure(Texts.language()).isEmpty());
      setOpaque(chosen);
      setBackground(UIManager.getColor("Longpoint.chosen"));
      getAccessibleContext()
          .setAccessibleName(
              Texts.of("problem." + problem.level())
                  + ": "
                  + problem.message(Texts.language())
                  + problem.cure(Texts.language()));
      return this;
    }
  }
}
