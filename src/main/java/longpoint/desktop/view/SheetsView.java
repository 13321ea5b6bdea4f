package longpoint.desktop.view;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.datatransfer.Transferable;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import longpoint.desktop.Engine;
import longpoint.desktop.Job;
import longpoint.desktop.Picks;
import longpoint.desktop.Settings;
import longpoint.desktop.Texts;
import longpoint.desktop.action.Task;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.desktop.paper.PageView;
import longpoint.desktop.paper.PaperTitle;
import longpoint.desktop.paper.SheetCopy;
import longpoint.drawing.Page;
import longpoint.packet.Packet;
import longpoint.pipeline.Design;
import longpoint.sheets.Paper;
import longpoint.units.LengthUnit;

/** The sheets exactly as they are exported and printed, listed on the left. */
public final class SheetsView implements BesideView {
  private static final int LIST_WIDTH = 210;

  /** Share of the height the list takes when it stands below. */
  private static final double LIST_SHARE = 0.4;

  /** From this width over height on there is room beside the sheet. */
  private static final double WIDE = 1.25;

  private final Job job;
  private final Picks picks;
  private final Settings settings;
  private final PageView view;
  private final Strip strip = new Strip("sheets");
  private final DefaultListModel<Page> model = new DefaultListModel<>();
  private final JList<Page> list = new JList<>(model);
  private final JScrollPane listing =
      new JScrollPane(
          list,
          ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
          ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
  private final JComboBox<Paper> papers = new JComboBox<>(Paper.values());
  private final JPanel pane = new JPanel(new BorderLayout());
  private final Engine<Question, Answer> engine;
  private Optional<Question> made = Optional.empty();
  private boolean filling;

  /** Designs are told apart by identity: they never change, and are large. */
  private record Question(Design design, Paper paper) {
    boolean same(Question other) {
      return design == other.design && paper == other.paper;
    }
  }

  private record Answer(Question question, List<Page> pages) {}

  /**
   * @param left tasks on the left of the strip: which sheet, and how large
   * @param right tasks on the right: what is done with it
   */
  SheetsView(
      Job job,
      Picks picks,
      Settings settings,
      Predicate<Character> letters,
      List<Task> left,
      List<Task> right) {
    this.job = job;
    this.picks = picks;
    this.settings = settings;
    view = new PageView(letters);
    view.getAccessibleContext().setAccessibleName(Texts.of("task.beside.sheets"));
    view.getAccessibleContext().setAccessibleDescription(Texts.of("panel.drawing.keys"));
    view.onPick(picks::pick);
    engine = new Engine<>(SheetsView::pages, this::arrived, Engine::bug);
    list.setName("sheets.list");
    list.getAccessibleContext().setAccessibleName(Texts.of("panel.sheets"));
    list.getAccessibleContext().setAccessibleDescription(Texts.of("panel.sheets.keys"));
    list.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
    list.setCellRenderer(new PageRow(job::title));
    list.addListSelectionListener(e -> turned());
    papers.setName("sheets.paper");
    papers.setToolTipText(Texts.of("sheets.paper.tip"));
    papers.getAccessibleContext().setAccessibleName(Texts.of("packet.paper"));
    papers.setRenderer(PaperTitle.renderer());
    papers.addActionListener(e -> paperChosen());
    WindowKeys.leave(list, left);
    left.forEach(t -> strip.picture(t, ""));
    strip.add(papers, "gapleft push");
    right.forEach(t -> strip.picture(t, ""));
    listing.setBorder(BorderFactory.createEmptyBorder());
    pane.add(strip, BorderLayout.NORTH);
    pane.add(view, BorderLayout.CENTER);
    pane.add(listing, BorderLayout.WEST);
    pane.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            place();
          }
        });
  }

  /** The list stands left of the sheet where there is room, else below it. */
  private void place() {
    boolean wide = pane.getWidth() > pane.getHeight() * WIDE;
    listing.setPreferredSize(new Dimension(LIST_WIDTH, (int) (pane.getHeight() * LIST_SHARE)));
    pane.remove(listing);
    pane.add(listing, wide ? BorderLayout.WEST : BorderLayout.SOUTH);
    pane.revalidate();
  }

  private static Answer pages(Question q) {
    return new Answer(q, Packet.pages(q.design().spokenElse(Texts.language()), q.paper()));
  }

  private LengthUnit unit() {
    return job.picture().design().plan().unit();
  }

  private void paperChosen() {
    if (!filling && papers.getSelectedItem() instanceof Paper paper) {
      settings.setPaper(unit(), paper);
      follow();
    }
  }

  @Override
  public JComponent component() {
    return pane;
  }

  @Override
  public JComponent heart() {
    return view;
  }

  public PageView view() {
    return view;
  }

  /** All sheets, in order; none before they have been laid out. */
  public List<Page> pages() {
    return IntStream.range(0, model.size()).mapToObj(model::get).toList();
  }

  /** Sheets chosen in the list, in order. */
  public List<Page> chosen() {
    return list.getSelectedValuesList();
  }

  /** A drag is sketched again and again: sheets are laid out once it is worked out. */
  @Override
  public void follow() {
    Question question = new Question(job.picture().design(), settings.paper(unit()));
    if (!job.isSketch() && made.filter(question::same).isEmpty()) {
      made = Optional.of(question);
      filling = true;
      papers.setSelectedItem(question.paper());
      filling = false;
      if (model.isEmpty()) {
        view.say(Texts.of("state.sheets"));
      }
      engine.ask(question);
    }
  }

  private void arrived(Answer answer) {
    if (made.filter(answer.question()::same).isEmpty()) {
      return;
    }
    String kept = Optional.ofNullable(list.getSelectedValue()).map(Page::number).orElse("");
    filling = true;
    model.clear();
    model.addAll(answer.pages());
    filling = false;
    int at =
        IntStream.range(0, model.size())
            .filter(i -> model.get(i).number().equals(kept))
            .findFirst()
            .orElse(0);
    if (model.isEmpty()) {
      view.show(Optional.empty());
    } else {
      list.setSelectedIndex(at);
      list.ensureIndexIsVisible(at);
    }
  }

  private void turned() {
    if (!filling) {
      Page page = list.getSelectedValue();
      view.show(Optional.ofNullable(page));
    }
  }

  @Override
  public void showPicks() {
    view.setPicked(picks.subjects());
  }

  @Override
  public void refresh() {
    strip.refresh();
    follow(); // other paper may have been chosen elsewhere
  }

  @Override
  public void startOver() {
    made = Optional.empty();
    filling = true;
    model.clear();
    filling = false;
    view.show(Optional.empty());
  }

  @Override
  public void dress(CanvasColours colours, double lettering) {
    view.setColours(colours);
  }

  @Override
  public void step(int by) {
    int to = list.getSelectedIndex() + by;
    if (to >= 0 && to < model.size()) {
      list.setSelectedIndex(to);
      list.ensureIndexIsVisible(to);
    }
  }

  @Override
  public Optional<Transferable> copied(SheetCopy.As as) {
    return view.page().map(p -> new SheetCopy(p, as));
  }

  @Override
  public void close() {
    engine.close();
  }
}
