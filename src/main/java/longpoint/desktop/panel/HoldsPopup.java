package longpoint.desktop.panel;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JToggleButton;
import longpoint.desktop.Texts;
import longpoint.editor.Settings;
import longpoint.editor.Snap;
import longpoint.editor.ToolRunner;
import longpoint.plan.EdgeKind;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import net.miginfocom.swing.MigLayout;

/** What holds the pointer, the steps it goes in, and what the edge tool sets; stays open. */
public final class HoldsPopup {
  /** Steps to choose from; 0 lets the pointer go anywhere. */
  private static final List<Double> INCHES = List.of(0.0, 1.0, 3.0, 6.0, 12.0, 24.0);

  private static final List<Double> MILLIMETRES = List.of(0.0, 10.0, 50.0, 100.0, 300.0, 600.0);

  /** Rounding to steps is not a hold to switch: it has its own row. */
  private static final List<Snap.Kind> KINDS =
      List.of(
          Snap.Kind.CORNER,
          Snap.Kind.MIDDLE,
          Snap.Kind.CROSSING,
          Snap.Kind.ON_SIDE,
          Snap.Kind.IN_LINE,
          Snap.Kind.SQUARE);

  private final ToolRunner runner;
  private final Consumer<Settings> changed;
  private final JPopupMenu popup = new JPopupMenu();

  private HoldsPopup(ToolRunner runner, Consumer<Settings> changed) {
    this.runner = runner;
    this.changed = changed;
    popup.setName("holds");
    popup.setLayout(new MigLayout("insets 12 16 14 20, wrap 1, gap 0 5"));
  }

  /**
   * Opens the list under a component.
   *
   * @param changed told of every change
   */
  public static JPopupMenu open(ToolRunner runner, Consumer<Settings> changed, JComponent under) {
    HoldsPopup made = new HoldsPopup(runner, changed);
    made.fill();
    made.popup.show(under, 0, under.getHeight());
    return made.popup;
  }

  private void fill() {
    title("holds.title");
    KINDS.forEach(this::hold);
    title("holds.steps");
    LengthUnit unit = runner.document().plan().unit();
    choice(
        "grid",
        unit == LengthUnit.INCH ? INCHES : MILLIMETRES,
        s -> s == 0 ? Texts.of("holds.free") : LengthText.of(s, unit),
        runner.settings().grid(),
        s -> use(runner.settings().withGrid(s)));
    title("holds.edge");
    choice(
        "edge",
        Stream.concat(
                Stream.of(Optional.<EdgeKind>empty()),
                Stream.of(EdgeKind.values()).map(Optional::of))
            .toList(),
        k -> k.map(kind -> Texts.of("kind." + kind.key())).orElse(Texts.of("holds.edge.next")),
        runner.settings().edgeKind(),
        k -> use(runner.settings().withEdgeKind(k)));
  }

  private void title(String key) {
    popup.add(new Words(Words.Rank.TITLE, Texts.of(key)), "gaptop 6, gapbottom 2");
  }

  private void hold(Snap.Kind kind) {
    String key = kind.name().toLowerCase(Locale.ROOT);
    JCheckBox box =
        new JCheckBox(Texts.of("holds." + key), runner.settings().snaps().contains(kind));
    box.setName("hold." + key);
    box.addActionListener(
        e -> {
          Set<Snap.Kind> on = EnumSet.noneOf(Snap.Kind.class);
          on.addAll(runner.settings().snaps());
          if (box.isSelected()) {
            on.add(kind);
          } else {
            on.remove(kind);
          }
          use(runner.settings().withSnaps(on));
        });
    popup.add(box);
  }

  private <T> void choice(
      String name, List<T> values, Function<T, String> words, T now, Consumer<T> take) {
    JPanel row = new JPanel(new MigLayout("insets 0, gap 4 4, wrap 3", "[grow,fill,sg]"));
    row.setOpaque(false);
    ButtonGroup group = new ButtonGroup();
    for (int i = 0; i < values.size(); i++) {
      T value = values.get(i);
      JToggleButton button = new JToggleButton(words.apply(value), value.equals(now));
      button.setName("holds." + name + "." + i);
      button.addActionListener(e -> take.accept(value));
      group.add(button);
      row.add(button);
    }
    popup.add(row, "growx");
  }

  private void use(Settings settings) {
    runner.use(settings);
    changed.accept(settings);
  }
}
