package longpoint.desktop.panel;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JPanel;
import longpoint.desktop.Texts;
import longpoint.editor.PartCommands;
import longpoint.editor.ToolRunner;
import longpoint.framing.run.RunFinder;
import longpoint.framing.run.RunProposal;
import longpoint.plan.Plan;
import longpoint.plan.RunChoices;
import net.miginfocom.swing.MigLayout;

/** How an outline of several legs is split: to accept, to turn round or to turn down. */
final class LegsRow extends JPanel {
  private static final long serialVersionUID = 1;

  private final transient ToolRunner runner;
  private transient Plan seen;
  private transient Optional<RunProposal> found = Optional.empty();
  private final String part;
  private final Words says = new Words(Words.Rank.PLAIN, "");
  private final JButton accept = button("accept", p -> c -> c.withThrough(p.at()));
  private final JButton turn = button("turn", p -> c -> c.withThrough(p.others().get(0)));
  private final JButton decline = button("decline", p -> c -> c.withLegs(RunChoices.Legs.WHOLE));

  LegsRow(ToolRunner runner, String part) {
    super(new MigLayout("insets 4 0 4 0, gap 4 4, fillx, wrap 3", "[grow,fill,sg]"));
    this.runner = runner;
    this.part = part;
    setOpaque(false);
    says.setName("legs.says");
    add(says, "span 3, growx");
    add(accept);
    add(turn);
    add(decline);
    update();
  }

  /** Follows the plan; not to be seen where there is nothing to split. */
  void update() {
    Optional<RunProposal> now = proposal();
    setVisible(now.isPresent());
    now.ifPresent(
        p -> {
          String reason = p.reason().name().toLowerCase(Locale.ROOT);
          says.setText(Html.wrapped(Texts.of("legs." + reason, p.wings().size()), 300));
          accept.setEnabled(p.reason() != RunProposal.Reason.CHOSEN);
          turn.setEnabled(!p.others().isEmpty());
          decline.setEnabled(p.reason() != RunProposal.Reason.DECLINED);
        });
  }

  private JButton button(String name, Function<RunProposal, UnaryOperator<RunChoices>> change) {
    JButton button = new JButton(Texts.of("legs." + name));
    button.setName("legs." + name);
    button.setToolTipText(Texts.of("legs." + name + ".tip"));
    button.addActionListener(e -> proposal().ifPresent(p -> apply(change.apply(p))));
    return button;
  }

  private void apply(UnaryOperator<RunChoices> change) {
    Plan plan = runner.document().plan();
    runner.apply(
        PartCommands.frame(
            plan,
            List.of(part),
            f -> f.withChoices(f.choices().withRuns(change.apply(f.choices().runs())))));
  }

  private Optional<RunProposal> proposal() {
    Plan plan = runner.document().plan();
    if (plan != seen) {
      seen = plan;
      found =
          RunFinder.find(plan).proposals().stream().filter(p -> p.part().equals(part)).findFirst();
    }
    return found;
  }
}
