package longpoint.desktop.panel;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import longpoint.desktop.Texts;
import longpoint.editor.PartCommands;
import longpoint.editor.ToolRunner;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.units.LengthEntry;
import longpoint.units.LengthList;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/** Rows about how a part's roof meets the one it runs on over. */
final class JoinForm {
  private JoinForm() {}

  /** Adds the rows for every join in which the part is the upper one. */
  static void add(Form form, ToolRunner runner, String part) {
    for (Join join : runner.document().plan().joins()) {
      if (join.upper().equals(part)) {
        rows(form, runner, join);
      }
    }
  }

  private static void rows(Form form, ToolRunner runner, Join first) {
    String lower =
        runner.document().plan().part(first.lower()).map(Part::name).orElse(first.lower());
    form.across(new Words(Words.Rank.QUIET, Texts.of("form.join", lower)));
    form.choice(
        "joinMethod",
        List.of(Join.Method.values()),
        m -> Texts.of("join." + m.key()),
        () -> now(runner, first).map(Join::method),
        m -> change(runner, first, j -> j.withMethod(m)));
    form.choice(
        "madeFor",
        List.of(Join.MadeFor.values()),
        m -> Texts.of("madeFor." + m.key()),
        () -> now(runner, first).map(Join::madeFor),
        m -> change(runner, first, j -> j.withMadeFor(m)));
    form.choice(
        "mouthTails",
        List.of(Join.MouthTails.values()),
        t -> Texts.of("mouthTails." + t.key()),
        () -> now(runner, first).map(Join::tails),
        t -> change(runner, first, j -> j.withTails(t)));
    form.entry(
            "chords",
            t -> LengthList.read(t, unit(runner), LengthEntry.Allowed.POSITIVE),
            c -> change(runner, first, j -> j.withChords(c)),
            () -> now(runner, first).map(j -> text(j.chords(), unit(runner))),
            () -> Texts.of("field.automatic"))
        .takingLines()
        .orEmpty(() -> change(runner, first, j -> j.withChords(List.of())));
  }

  private static LengthUnit unit(ToolRunner runner) {
    return runner.document().plan().unit();
  }

  private static String text(List<Double> lengths, LengthUnit unit) {
    return lengths.stream().map(l -> LengthText.exact(l, unit)).collect(Collectors.joining("; "));
  }

  private static Optional<Join> now(ToolRunner runner, Join first) {
    return runner.document().plan().joins().stream()
        .filter(j -> j.upper().equals(first.upper()) && j.lower().equals(first.lower()))
        .findFirst();
  }

  private static void change(ToolRunner runner, Join first, UnaryOperator<Join> edit) {
    now(runner, first).ifPresent(j -> runner.apply(PartCommands.join(edit.apply(j))));
  }
}
