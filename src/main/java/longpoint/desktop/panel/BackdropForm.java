package longpoint.desktop.panel;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import longpoint.desktop.Texts;
import longpoint.editor.MarkupCommands;
import longpoint.editor.ToolRunner;
import longpoint.editor.tools.PictureTools;
import longpoint.plan.Backdrop;
import longpoint.plan.Plan;
import longpoint.units.AngleEntry;
import longpoint.units.Decimal;
import longpoint.units.LengthEntry;

/** Properties of the picture behind the plan. */
final class BackdropForm implements Properties.Subject {
  private static final double HUNDREDTH = 100;

  private static final List<Double> STRENGTHS = List.of(0.15, 0.3, 0.5, 1.0);

  private final ToolRunner runner;
  private final Form form;

  BackdropForm(ToolRunner runner) {
    this.runner = runner;
    this.form = new Form(() -> Texts.of("form.backdrop"));
    form.says("backdropName", () -> backdrop().map(Backdrop::name).orElse(""));
    for (PictureTools tool : PictureTools.values()) {
      JButton button = new JButton(tool.label());
      button.setName("picture." + tool);
      button.setToolTipText(tool.hint());
      button.addActionListener(e -> runner.choose(tool));
      form.across(button);
    }
    form.entry(
        "backdropWidth",
        t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.POSITIVE),
        this::widen,
        () -> backdrop().map(b -> Editable.rounded(b.width(), plan().unit())),
        () -> "");
    form.entry(
        "backdropTurned",
        AngleEntry::read,
        this::turn,
        () -> backdrop().map(b -> Decimal.json(Math.rint(HUNDREDTH * b.degrees()) / HUNDREDTH)),
        () -> "0");
    form.choice(
        "strength",
        STRENGTHS,
        s -> Texts.of("strength.words", Math.round(100 * s)),
        () -> backdrop().map(Backdrop::strength),
        s -> runner.apply(MarkupCommands.backdrop(b -> b.withStrength(s))));
    form.choice(
        "backdropState",
        List.of(Backdrop.State.values()),
        s -> Texts.of("backdropState." + s.key()),
        () -> backdrop().map(Backdrop::state),
        s -> runner.apply(MarkupCommands.backdrop(b -> b.withState(s))));
  }

  private void widen(double width) {
    runner.apply(MarkupCommands.backdrop(b -> b.scaled(b.at(), width / b.width())));
  }

  private void turn(double degrees) {
    runner.apply(
        MarkupCommands.backdrop(b -> b.turned(b.bounds().middle(), degrees - b.degrees())));
  }

  private Optional<Backdrop> backdrop() {
    return plan().markup().backdrop();
  }

  private Plan plan() {
    return runner.document().plan();
  }

  @Override
  public Object key() {
    return "backdrop";
  }

  @Override
  public JComponent view() {
    return form;
  }

  @Override
  public void update() {
    form.update();
  }
}
