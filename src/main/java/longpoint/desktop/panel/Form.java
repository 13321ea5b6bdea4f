package longpoint.desktop.panel;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingConstants;
import longpoint.desktop.Texts;
import net.miginfocom.swing.MigLayout;

/**
 * Rows of a label and something to set. Each row knows how to bring itself up to date; the words of
 * a row stand in the texts under {@code field.<name>}, with a tool tip under {@code
 * field.<name>.tip}.
 */
final class Form extends JPanel {
  private static final long serialVersionUID = 1;
  private final transient List<Runnable> updates = new ArrayList<>();
  private transient Optional<Folding> folding = Optional.empty();

  /** Where the rows of a fold that is being opened go. */
  private record Folding(List<Component> inside, int first) {
    int next() {
      return first + inside.size();
    }
  }

  private final transient Folds folds;

  Form(Supplier<String> title) {
    this(title, new Folds());
  }

  /**
   * @param folds which headings stand open, kept for the next form
   */
  Form(Supplier<String> title, Folds folds) {
    super(
        new MigLayout(
            "insets 0, gapx 12, gapy 7, fillx, wrap 2, hidemode 3", "[right,100::][grow,fill]"));
    this.folds = folds;
    setOpaque(false);
    Words words = new Words(Words.Rank.TITLE, title.get());
    words.setName("form.title");
    add(words, "span 2, alignx left, gapbottom 4");
    updates.add(() -> words.setText(title.get()));
  }

  /** Brings every row up to date. */
  void update() {
    updates.forEach(Runnable::run);
  }

  /**
   * A row to type in.
   *
   * @param text what stands in it, as it would be typed; empty for nothing of its own
   * @param whenEmpty what holds then, shown in grey
   */
  <T> EntryField<T> entry(
      String name,
      EntryField.Reading<T> reading,
      Consumer<T> commit,
      Supplier<Optional<String>> text,
      Supplier<String> whenEmpty) {
    EntryField<T> field = new EntryField<>(name, Texts.of("field." + name), reading, commit);
    row(name, field, field.field());
    Runnable update = () -> field.update(text.get().orElse(""), whenEmpty.get());
    updates.add(update);
    update.run();
    return field;
  }

  /**
   * A row of buttons of which one is down.
   *
   * @param chosen the one that is down; none when empty
   * @param title of each button
   */
  <T> void choice(
      String name,
      List<T> values,
      java.util.function.Function<T, String> title,
      Supplier<Optional<T>> chosen,
      Consumer<T> commit) {
    JPanel buttons = new JPanel(new ChoiceRows());
    buttons.setOpaque(false);
    ButtonGroup group = new ButtonGroup();
    List<JToggleButton> toggles = new ArrayList<>();
    for (T value : values) {
      JToggleButton button = new JToggleButton(title.apply(value));
      button.setName(name + "." + value.toString().toLowerCase(java.util.Locale.ROOT));
      button.setToolTipText(Texts.of("field." + name + ".tip"));
      button.addActionListener(e -> commit.accept(value));
      group.add(button);
      toggles.add(button);
      buttons.add(button);
    }
    row(name, buttons, buttons);
    Runnable update =
        () -> {
          int now = chosen.get().map(values::indexOf).orElse(-1);
          if (now >= 0 && toggles.get(now).isSelected()) {
            return;
          }
          group.clearSelection();
          if (now >= 0) {
            toggles.get(now).setSelected(true);
          }
        };
    updates.add(update);
    update.run();
  }

  /** A row that only says something. */
  void says(String name, Supplier<String> words) {
    Words value = new Words(Words.Rank.PLAIN, words.get());
    value.setName(name);
    // As far down as the lettering in the boxes above and below.
    value.setBorder(BorderFactory.createEmptyBorder(5, 0, 0, 0));
    row(name, value, value);
    updates.add(() -> value.setText(words.get()));
  }

  /** Something else to bring up to date with the rows. */
  void also(Runnable update) {
    updates.add(update);
  }

  /** Something across both columns. */
  void across(JComponent component) {
    put(component, "span 2, growx");
  }

  /**
   * A heading to click that shows and hides the rows added by {@code rows}; hidden until it has
   * been opened once, and made when they are first asked for. Its words stand in the texts under
   * {@code form.<name>}.
   */
  void fold(String name, Runnable rows) {
    JToggleButton heading = new JToggleButton("", folds.isOpen(name));
    heading.setName("fold." + name);
    heading.setHorizontalAlignment(SwingConstants.LEADING);
    across(heading);
    List<Component> inside = new ArrayList<>();
    Runnable show =
        () -> {
          boolean open = heading.isSelected();
          if (open && inside.isEmpty()) {
            folding = Optional.of(new Folding(inside, getComponentZOrder(heading) + 1));
            rows.run();
            folding = Optional.empty();
          }
          heading.setText((open ? "\u2212  " : "+  ") + Texts.of("form." + name));
          inside.forEach(c -> c.setVisible(open));
          revalidate();
        };
    heading.addActionListener(
        e -> {
          if (heading.isSelected()) {
            folds.opened(name);
          } else {
            folds.closed(name);
          }
          show.run();
        });
    show.run();
  }

  private void put(Component component, String place) {
    add(component, place, folding.map(Folding::next).orElse(-1));
    folding.ifPresent(f -> f.inside.add(component));
  }

  private void row(String name, JComponent whole, JComponent spoken) {
    Words label = new Words(Words.Rank.QUIET, Texts.of("field." + name));
    label.setLabelFor(spoken);
    spoken.setToolTipText(Texts.of("field." + name + ".tip"));
    spoken.getAccessibleContext().setAccessibleName(Texts.of("field." + name));
    put(label, "aligny top, gaptop 6");
    put(whole, "wmin 0");
  }
}
