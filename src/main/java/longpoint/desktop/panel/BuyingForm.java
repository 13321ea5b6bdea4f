package longpoint.desktop.panel;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import longpoint.editor.PlanCommands;
import longpoint.editor.ToolRunner;
import longpoint.plan.Buying;
import longpoint.plan.Plan;
import longpoint.plan.SpanRating;
import longpoint.units.LengthEntry;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.NumberEntry;

/** Rows about what is bought: sheathing and roofing, then boards. Emptied rows take the usual. */
final class BuyingForm {
  private static final double PERCENT = 100;

  private final Form form;
  private final ToolRunner runner;

  private BuyingForm(Form form, ToolRunner runner) {
    this.form = form;
    this.runner = runner;
  }

  static void add(Form form, ToolRunner runner) {
    BuyingForm rows = new BuyingForm(form, runner);
    form.fold("buying", rows::covering);
    form.fold("boards", rows::boards);
  }

  private void covering() {
    form.choice(
        "rating",
        List.of(SpanRating.values()),
        SpanRating::stamp,
        () -> Optional.of(now().rating()),
        r -> change(now().withRating(r)));
    length("nailEdge", b -> b.nails().edge(), (b, l) -> b.withNails(nails(l, b.nails().field())));
    length("nailField", b -> b.nails().field(), (b, l) -> b.withNails(nails(b.nails().edge(), l)));
    number(
        "roofingWaste",
        NumberEntry::notNegative,
        b -> b.roofingWaste() * PERCENT,
        (b, p) -> b.withWaste(p / PERCENT));
    number("bundles", NumberEntry::positive, Buying::bundlesPerSquare, Buying::withBundles);
    number(
        "underlayRoll",
        NumberEntry::positive,
        b -> b.underlayRoll() / square(),
        (b, area) -> b.withRoll(area * square()));
    form.choice(
        "vent",
        List.of(Buying.Vent.values()),
        Buying.Vent::key,
        () -> Optional.of(now().vent()),
        v -> change(now().withVent(v)));
  }

  private static Buying.Nails nails(double edge, double field) {
    return new Buying.Nails(edge, field);
  }

  /** Areas are typed in square feet or square metres. */
  private double square() {
    return switch (plan().unit()) {
      case INCH -> 144;
      case MILLIMETRE -> 1e6;
    };
  }

  private void boards() {
    form.entry(
            "boardLengths",
            t -> NumberEntry.lengths(t, plan().unit()),
            l -> change(now().withBoards(lengths(now().boards(), l))),
            () -> Optional.of(told(now().boards().lengths())),
            () -> "")
        .orEmpty(
            () -> change(now().withBoards(lengths(now().boards(), usual().boards().lengths()))));
    board("kerf", Buying.Boards::kerf, (b, l) -> with(b, l, b.rafter(), b.hip(), b.fascia()));
    board(
        "rafterWidth", Buying.Boards::rafter, (b, l) -> with(b, b.kerf(), l, b.hip(), b.fascia()));
    board("hipWidth", Buying.Boards::hip, (b, l) -> with(b, b.kerf(), b.rafter(), l, b.fascia()));
    board(
        "fasciaWidth", Buying.Boards::fascia, (b, l) -> with(b, b.kerf(), b.rafter(), b.hip(), l));
  }

  private String told(List<Double> lengths) {
    return lengths.stream()
        .map(l -> LengthText.exact(l, plan().unit()))
        .collect(Collectors.joining("; "));
  }

  private static Buying.Boards lengths(Buying.Boards b, List<Double> lengths) {
    return new Buying.Boards(
        b.kerf(),
        lengths,
        b.blocking(),
        b.rafter(),
        b.hip(),
        b.ridge(),
        b.fascia(),
        b.rake(),
        b.rakeThickness());
  }

  /** A ridge board is as deep as a hip. */
  private static Buying.Boards with(
      Buying.Boards b, double kerf, double rafter, double hip, double fascia) {
    return new Buying.Boards(
        kerf,
        b.lengths(),
        b.blocking(),
        rafter,
        hip,
        hip == b.hip() ? b.ridge() : hip,
        fascia,
        b.rake(),
        b.rakeThickness());
  }

  private void board(
      String name,
      ToDoubleFunction<Buying.Boards> of,
      BiFunction<Buying.Boards, Double, Buying.Boards> with) {
    length(
        name, b -> of.applyAsDouble(b.boards()), (b, l) -> b.withBoards(with.apply(b.boards(), l)));
  }

  private void length(
      String name, ToDoubleFunction<Buying> of, BiFunction<Buying, Double, Buying> with) {
    row(
        name,
        t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.POSITIVE),
        of,
        with,
        l -> Editable.length(l, plan().unit()));
  }

  private void number(
      String name,
      EntryField.Reading<Double> reading,
      ToDoubleFunction<Buying> of,
      BiFunction<Buying, Double, Buying> with) {
    row(name, reading, of, with, BuyingForm::plain);
  }

  private void row(
      String name,
      EntryField.Reading<Double> reading,
      ToDoubleFunction<Buying> of,
      BiFunction<Buying, Double, Buying> with,
      Function<Double, String> text) {
    form.entry(
            name,
            reading,
            v -> change(with.apply(now(), v)),
            () -> Optional.of(text.apply(of.applyAsDouble(now()))),
            () -> "")
        .orEmpty(() -> change(with.apply(now(), of.applyAsDouble(usual()))));
  }

  /** Without a nought behind the point; percentages come out of binary shares. */
  private static String plain(double value) {
    double rounded = Math.rint(value * 1e6) / 1e6;
    return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
  }

  private void change(Buying buying) {
    runner.apply(PlanCommands.buying(buying));
  }

  private Buying now() {
    return plan().buying();
  }

  private Buying usual() {
    LengthUnit unit = plan().unit();
    return Buying.of(unit);
  }

  private Plan plan() {
    return runner.document().plan();
  }
}
