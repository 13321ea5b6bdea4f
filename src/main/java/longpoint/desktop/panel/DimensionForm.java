package longpoint.desktop.panel;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import longpoint.desktop.Texts;
import longpoint.editor.MarkupCommands;
import longpoint.editor.ToolRunner;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension;
import longpoint.units.LengthEntry;
import longpoint.units.LengthText;

/** Properties of one dimension of the user's own. */
final class DimensionForm implements Properties.Subject {
  private final ToolRunner runner;
  private final String id;
  private final Form form;

  DimensionForm(ToolRunner runner, String id) {
    this.runner = runner;
    this.id = id;
    this.form = new Form(() -> Texts.of("form.dimension"));
    form.says(
        "measures",
        () ->
            dimension()
                .flatMap(d -> d.line(plan()))
                .map(Segment::length)
                .map(l -> LengthText.of(l, plan().unit()))
                .orElse(""));
    form.choice(
        "along",
        List.of(PlanDimension.Along.values()),
        a -> Texts.of("along." + a.key()),
        () -> dimension().map(PlanDimension::along),
        a -> runner.apply(MarkupCommands.dimension(id, d -> d.withLine(a, d.offset()))));
    form.entry(
        "standsOff",
        t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.ANY),
        l -> runner.apply(MarkupCommands.dimension(id, d -> d.withLine(d.along(), l))),
        () -> dimension().map(d -> Editable.length(d.offset(), plan().unit())),
        () -> "");
  }

  private Optional<PlanDimension> dimension() {
    return plan().markup().dimension(id);
  }

  private Plan plan() {
    return runner.document().plan();
  }

  @Override
  public Object key() {
    return "dimension " + id;
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
