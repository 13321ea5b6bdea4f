package longpoint.editor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.plan.Buying;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.SpanRating;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/** Cures by what is bought: sheets of a higher rating, longer boards, a deeper ridge. */
final class BuyingCures {
  /** Common depths of sawn boards, 2x6 to 2x12, in inches. */
  private static final double[] DEPTHS = {5.5, 7.25, 9.25, 11.25};

  /** Spacings in inches that sheets are made for. */
  private static final double[] SPACINGS = {24, 19.2, 16, 12};

  private final Plan plan;
  private final List<Cure> cures = new ArrayList<>();

  private BuyingCures(Plan plan) {
    this.plan = plan;
  }

  static List<Cure> of(Plan plan, Problem problem) {
    BuyingCures all = new BuyingCures(plan);
    if (problem.wrong() instanceof Phrase wrong) {
      switch (wrong.key()) {
        case "field.span.far" -> {
          all.rating(figure(wrong, 0));
          all.closer(((PlaceName) wrong.parts().get(1)).part());
        }
        case "field.board.tooLong" -> all.longer(figure(wrong, 1));
        case "framing.ridge.shallow" -> all.ridge(figure(wrong, 2));
        default -> {
          // About something else.
        }
      }
    }
    return all.cures;
  }

  private static double figure(Phrase phrase, int at) {
    return ((LengthFigure) phrase.parts().get(at)).length();
  }

  private double inches(double inches) {
    return plan.unit().fromMillimetres(inches * LengthUnit.MM_PER_INCH);
  }

  /** The lowest rating that spans it. */
  private void rating(double span) {
    Arrays.stream(SpanRating.values())
        .filter(r -> r.at(span, plan.unit()) != SpanRating.EdgeSupport.TOO_FAR)
        .findFirst()
        .ifPresent(r -> add("rating", plan.buying().withRating(r), r.stamp()));
  }

  /** The widest common spacing that the sheets span, where they span less than the part's. */
  private void closer(String part) {
    SpanRating rating = plan.buying().rating();
    Optional<Double> closer =
        Arrays.stream(SPACINGS)
            .map(this::inches)
            .boxed()
            .filter(s -> rating.at(s, plan.unit()) != SpanRating.EdgeSupport.TOO_FAR)
            .findFirst();
    boolean wide =
        plan.part(part).filter(p -> p.frame().spacing() > closer.orElse(0.0)).isPresent();
    if (wide && closer.isPresent()) {
      Command command = PartCommands.spacing(plan, List.of(part), closer.get());
      cures.add(
          Cures.named(
              "spacing.closer",
              command,
              Naming.parts(plan, List.of(part)),
              Naming.length(plan, closer.get())));
    }
  }

  /** Boards go by twos of feet, or by 300 mm. */
  private void longer(double length) {
    double step = plan.unit() == LengthUnit.INCH ? 24 : 300;
    double board = Math.ceil(length / step - 1e-9) * step;
    Buying.Boards now = plan.buying().boards();
    List<Double> lengths =
        Stream.concat(now.lengths().stream(), Stream.of(board)).distinct().sorted().toList();
    add(
        "board",
        plan.buying()
            .withBoards(
                new Buying.Boards(
                    now.kerf(),
                    lengths,
                    now.blocking(),
                    now.rafter(),
                    now.hip(),
                    now.ridge(),
                    now.fascia(),
                    now.rake(),
                    now.rakeThickness())),
        Naming.length(plan, board));
  }

  /** The next common depth; beyond 2x12 the depth itself, to the mark above. */
  private void ridge(double depth) {
    double mark = plan.unit() == LengthUnit.INCH ? 1 / 4.0 : 5;
    double deep =
        Arrays.stream(DEPTHS)
            .map(this::inches)
            .map(d -> plan.unit() == LengthUnit.INCH ? d : Math.rint(d))
            .filter(d -> d >= depth)
            .findFirst()
            .orElse(Math.ceil(depth / mark - 1e-9) * mark);
    Buying.Boards now = plan.buying().boards();
    add(
        "ridge",
        plan.buying()
            .withBoards(
                new Buying.Boards(
                    now.kerf(),
                    now.lengths(),
                    now.blocking(),
                    now.rafter(),
                    now.hip(),
                    deep,
                    now.fascia(),
                    now.rake(),
                    now.rakeThickness())),
        Naming.length(plan, deep));
  }

  private void add(String key, Buying buying, Object... parts) {
    cures.add(Cures.named(key, PlanCommands.buying(buying), parts));
  }
}
