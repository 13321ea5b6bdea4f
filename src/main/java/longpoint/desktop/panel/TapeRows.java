package longpoint.desktop.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import longpoint.desktop.Texts;
import longpoint.editor.PlanCommands;
import longpoint.editor.ToolRunner;
import longpoint.field.built.BuiltTape;
import longpoint.field.built.BuiltWalls;
import longpoint.plan.AsBuilt;
import longpoint.plan.AsBuilt.Tape;
import longpoint.plan.AsBuilt.Use;
import longpoint.plan.CornerNumber;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension.Corner;
import longpoint.units.LengthEntry;
import longpoint.units.LengthText;
import longpoint.units.Rounding;
import net.miginfocom.swing.MigLayout;

/**
 * A row to type in for every wall, for the diagonals of parts of four corners, and for every other
 * pair of corners that was taped or should be next. Grey is what the plan says; behind a reading
 * stands what the fit leaves of it.
 */
final class TapeRows extends JPanel {
  private static final long serialVersionUID = 1;

  /** More rows than this would bury the rest of the panel; the list below takes any. */
  private static final int MOST = 30;

  /** Two corners, by their numbers. */
  private record Pair(int from, int to) {}

  private final transient ToolRunner runner;
  private transient List<Pair> pairs = List.of();
  private final transient List<Runnable> updates = new ArrayList<>();
  private transient BuiltWalls walls = BuiltWalls.NONE;
  private transient Plan told;

  TapeRows(ToolRunner runner) {
    super(new MigLayout("insets 0, gapx 8, gapy 3, fillx, wrap 4", "[right][grow,fill][right][]"));
    this.runner = runner;
    setOpaque(false);
    update();
  }

  private Plan plan() {
    return runner.document().plan();
  }

  /** What the readings come to, as the rows last told it. */
  BuiltWalls walls() {
    return walls;
  }

  /** Brings the rows up to date with the plan. */
  void update() {
    if (told == plan()) {
      return;
    }
    told = plan();
    walls = BuiltWalls.of(told);
    List<Pair> now = wanted();
    if (!now.equals(pairs)) {
      pairs = now;
      removeAll();
      updates.clear();
      pairs.forEach(this::row);
      revalidate();
    }
    updates.forEach(Runnable::run);
  }

  private List<Pair> wanted() {
    List<Pair> all = new ArrayList<>();
    int first = 1;
    for (Part part : told.parts()) {
      int before = first;
      for (longpoint.geometry.Ring ring : part.rings()) {
        for (int i = 0; i < ring.size(); i++) {
          all.add(new Pair(before + i, before + (i + 1) % ring.size()));
        }
        before += ring.size();
      }
      if (part.sideCount() == 4) {
        all.add(new Pair(first, first + 2));
        all.add(new Pair(first + 1, first + 3));
      }
      first += part.sideCount();
    }
    List<Pair> taken =
        walls.tapes().stream()
            .filter(t -> t.from() > 0 && t.to() > 0)
            .map(t -> new Pair(t.from(), t.to()))
            .toList();
    taken.stream().filter(p -> !holds(all, p)).forEach(all::add);
    walls.next().stream()
        .map(n -> new Pair(n.from(), n.to()))
        .filter(p -> !holds(all, p))
        .forEach(all::add);
    return List.copyOf(all.subList(0, Math.min(MOST, all.size())));
  }

  private static boolean holds(List<Pair> all, Pair pair) {
    return all.contains(pair) || all.contains(new Pair(pair.to(), pair.from()));
  }

  private void row(Pair pair) {
    String name = pair.from() + "-" + pair.to();
    Words label = new Words(Words.Rank.QUIET, name.replace('-', '–'));
    EntryField<Double> field =
        new EntryField<>(
            "tape." + name,
            Texts.of("tape.between", pair.from(), pair.to()),
            t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.POSITIVE),
            reads -> put(pair, reads));
    field.orEmpty(() -> change(pair, t -> Optional.empty()));
    Words state = new Words(Words.Rank.QUIET, "");
    state.setName("tape." + name + ".state");
    JCheckBox counts = new JCheckBox();
    counts.setName("tape." + name + ".counts");
    counts.setToolTipText(Texts.of("tape.counts.tip"));
    counts.getAccessibleContext().setAccessibleName(Texts.of("tape.counts", name));
    counts.setOpaque(false);
    counts.addActionListener(
        e -> change(pair, t -> Optional.of(t.used(counts.isSelected() ? Use.COUNTS : Use.ASIDE))));
    add(label);
    add(field, "wmin 0");
    add(state);
    add(counts);
    updates.add(
        () -> {
          Optional<Tape> tape = tape(pair);
          field.update(
              tape.map(t -> Editable.length(t.reads(), plan().unit())).orElse(""), planned(pair));
          counts.setEnabled(tape.isPresent());
          counts.setSelected(tape.map(t -> t.use() == Use.COUNTS).orElse(false));
          state.setText(tape.map(this::state).orElse(""));
          boolean doubted = tape.map(this::place).map(this::doubted).orElse(false);
          state.setForeground((doubted ? Words.Rank.WRONG : Words.Rank.QUIET).colour());
        });
  }

  private boolean doubted(int place) {
    return walls.tapes().get(place).state() == BuiltTape.State.DOUBTED;
  }

  private int place(Tape tape) {
    return Math.max(0, now().tapes().indexOf(tape));
  }

  /** What the fit leaves of a reading. */
  private String state(Tape tape) {
    BuiltTape built = walls.tapes().get(place(tape));
    String off = LengthText.small(Math.abs(built.residual()), plan().unit(), Rounding.NEAREST);
    return switch (built.state()) {
      case COUNTS -> "± " + off;
      case DOUBTED -> Texts.of(built.residual() < 0 ? "tape.long" : "tape.short", off);
      case ASIDE -> Texts.of("tape.aside");
      case NOWHERE -> "";
    };
  }

  private String planned(Pair pair) {
    Optional<Corner> from = CornerNumber.at(plan(), pair.from());
    Optional<Corner> to = CornerNumber.at(plan(), pair.to());
    return from.isPresent() && to.isPresent()
        ? LengthText.of(
            from.get().at(plan()).orElseThrow().distance(to.get().at(plan()).orElseThrow()),
            plan().unit())
        : "";
  }

  private AsBuilt now() {
    return plan().onSite().walls();
  }

  private Optional<Tape> tape(Pair pair) {
    Optional<Corner> from = CornerNumber.at(plan(), pair.from());
    Optional<Corner> to = CornerNumber.at(plan(), pair.to());
    return from.isEmpty() || to.isEmpty()
        ? Optional.empty()
        : now().tapes().stream().filter(t -> t.between(from.get(), to.get())).findFirst();
  }

  private void put(Pair pair, double reads) {
    if (tape(pair).isPresent()) {
      change(pair, t -> Optional.of(t.reading(reads)));
      return;
    }
    Optional<Corner> from = CornerNumber.at(plan(), pair.from());
    Optional<Corner> to = CornerNumber.at(plan(), pair.to());
    if (from.isPresent() && to.isPresent()) {
      List<Tape> all = new ArrayList<>(now().tapes());
      all.add(Tape.of(from.get(), to.get(), reads));
      set(w -> w.withTapes(all));
    }
  }

  /** Changes the first reading between two corners, or takes it off. */
  private void change(Pair pair, java.util.function.Function<Tape, Optional<Tape>> edit) {
    Optional<Tape> tape = tape(pair);
    if (tape.isPresent()) {
      List<Tape> all = new ArrayList<>(now().tapes());
      int place = all.indexOf(tape.get());
      all.remove(place);
      edit.apply(tape.get()).ifPresent(t -> all.add(place, t));
      set(w -> w.withTapes(all));
    }
  }

  private void set(UnaryOperator<AsBuilt> edit) {
    runner.apply(PlanCommands.onSite(s -> s.withWalls(edit.apply(s.walls()))));
  }
}
