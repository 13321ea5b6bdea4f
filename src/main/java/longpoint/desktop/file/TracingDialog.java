package longpoint.desktop.file;

import java.awt.Component;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import longpoint.desktop.Texts;
import longpoint.desktop.file.TracingFlow.Choice;
import longpoint.tracing.CadDrawing;
import longpoint.tracing.CadDrawing.LayerSummary;
import longpoint.tracing.DrawingUnit;
import longpoint.tracing.Gap;
import longpoint.tracing.Traced;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import net.miginfocom.swing.MigLayout;

/** Asks which layers of a drawing hold walls, what unit it is in, and about courtyards. */
final class TracingDialog {
  private static final int ROWS = 10;

  private TracingDialog() {}

  static Optional<Choice> ask(Component over, CadDrawing drawing) {
    Choice likely = Choice.likely(drawing);
    List<LayerSummary> layers = drawing.layers();
    JList<String> list =
        new JList<>(
            layers.stream()
                .map(l -> Texts.of("tracing.layer", l.name(), l.strokes()))
                .toArray(String[]::new));
    list.setName("tracing.layers");
    list.setVisibleRowCount(ROWS);
    list.setSelectedIndices(
        java.util.stream.IntStream.range(0, layers.size())
            .filter(i -> likely.layers().contains(layers.get(i).name()))
            .toArray());
    JComboBox<String> unit =
        new JComboBox<>(
            Arrays.stream(DrawingUnit.values()).map(DrawingUnit::symbol).toArray(String[]::new));
    unit.setName("tracing.unit");
    unit.setSelectedIndex(likely.unit().ordinal());
    JCheckBox inner = new JCheckBox(Texts.of("tracing.inner"));
    inner.setName("tracing.inner");
    JPanel panel = new JPanel(new MigLayout("insets 0, wrap 1, fillx", "[grow,fill,320::]"));
    panel.add(labelled("tracing.layers", list));
    panel.add(new JScrollPane(list));
    panel.add(labelled("tracing.unit", unit));
    panel.add(unit);
    panel.add(inner);
    int answer =
        JOptionPane.showConfirmDialog(
            over,
            panel,
            Texts.of("tracing.title"),
            JOptionPane.OK_CANCEL_OPTION,
            JOptionPane.PLAIN_MESSAGE);
    Set<String> chosen =
        Arrays.stream(list.getSelectedIndices())
            .mapToObj(i -> layers.get(i).name())
            .collect(Collectors.toCollection(HashSet::new));
    return answer == JOptionPane.OK_OPTION
        ? Optional.of(
            new Choice(
                chosen,
                DrawingUnit.values()[unit.getSelectedIndex()],
                inner.isSelected() ? Traced.Inner.COURTYARDS : Traced.Inner.LEFT_OUT))
        : Optional.empty();
  }

  /** Shows where lines do not meet, and asks whether to close them. */
  static Optional<Traced.Gaps> gaps(Component over, Traced traced, LengthUnit unit) {
    double widest = traced.gaps().stream().mapToDouble(Gap::width).max().orElse(0);
    String answer =
        Question.ask(
            over,
            Texts.of("gaps.title"),
            Texts.of("gaps.words", traced.gaps().size(), LengthText.of(widest, unit)),
            Optional.of(new GapSketch(traced, unit)),
            List.of(
                new Question.Answer("close", Texts.of("gaps.close")),
                new Question.Answer("leave", Texts.of("gaps.leave")),
                new Question.Answer("stay", Texts.of("gaps.stay"))));
    return switch (answer) {
      case "close" -> Optional.of(Traced.Gaps.CLOSED);
      case "leave" -> Optional.of(Traced.Gaps.LEFT_OPEN);
      default -> Optional.empty();
    };
  }

  private static JLabel labelled(String key, Component of) {
    JLabel label = new JLabel(Texts.of(key));
    label.setLabelFor(of);
    return label;
  }
}
