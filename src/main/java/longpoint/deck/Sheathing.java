package longpoint.deck;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.framing.FramingSet;
import longpoint.framing.run.Mouth;
import longpoint.geometry.Segment;
import longpoint.plan.Deck;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.stop.CalledOff;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/**
 * Front door of this package: from planes and their supports to courses, pieces and sheets.
 *
 * <p>In: a solved roof and, for each plane, the centre lines of what carries it. Out: for every
 * plane of every part, pieces that tile what is to be sheathed; for every kind of sheet, a cutting
 * diagram that holds every piece once, and a proven bound. Pure: the same input gives the same
 * result, bit for bit. Not promised: the least number of sheets; the bound stands beside it.
 */
public final class Sheathing {
  private final Plan plan;
  private final RoofSurface surface;
  private final List<Problem> problems = new ArrayList<>();

  private Sheathing(Plan plan, RoofSurface surface) {
    this.plan = plan;
    this.surface = surface;
  }

  /** Sheathes a roof on its frame. */
  public static DeckPlan lay(Plan plan, RoofSurface surface, FramingSet framing) {
    RoofSurface built = Mouth.cutFrom(surface, framing.mouths());
    return new Sheathing(plan, built).lay(Carriers.of(plan, built, framing));
  }

  /**
   * Sheathes a roof on any supports.
   *
   * @param supports plane id to centre lines in plan; a plane without any is laid on the sheet
   *     module and noted
   */
  public static DeckPlan lay(Plan plan, RoofSurface surface, Map<String, List<Support>> supports) {
    return new Sheathing(plan, surface).lay(supports);
  }

  private DeckPlan lay(Map<String, List<Support>> supports) {
    List<Choice> choices = new ArrayList<>();
    List<PlaneDeck> bare = new ArrayList<>();
    for (FlushPlanes flush : FlushPlanes.of(surface)) {
      CalledOff.check();
      Part part = part(flush.whole());
      if (!workable(part, flush.whole())) {
        continue;
      }
      Ground ground = ground(flush);
      List<Support> flat = flat(flush, supports, ground.unfold());
      bare.add(bare(flush, ground, flat));
      if (!part.existing()) {
        CourseLines lines = Ripping.of(part, flush.whole(), ground);
        choices.add(Choice.of(ground, lines, flat, start(part, flush.whole())));
      }
    }
    Refining.Found found = LeastSheets.choose(choices);
    List<Laying> chosen = found.layings();
    Naming naming = new Naming();
    List<PlaneDeck> planes = new ArrayList<>(bare);
    for (int i = 0; i < choices.size(); i++) {
      Choice choice = choices.get(i);
      Laying laying = chosen.get(i);
      note(choice, laying);
      int at = index(planes, choice.ground().plane().id());
      planes.set(at, laid(planes.get(at), laying, naming.name(choice.ground(), laying.pieces())));
    }
    return new DeckPlan(planes, Cutting.stock(planes, found), problems);
  }

  /** Where a plane's sheets begin. */
  static Deck.Start start(Part part, RoofPlane plane) {
    return part.edges().get(plane.edge()).start().orElse(part.deck().start());
  }

  /** Whether a plane's sheets are sheets at all, and not so small that there is no end of them. */
  private boolean workable(Part part, RoofPlane plane) {
    Deck deck = part.deck();
    double area = deck.sheetWidth() * deck.sheetLength();
    boolean sheets = deck.sheetWidth() > 0 && deck.sheetLength() > 0 && Double.isFinite(area);
    boolean thick = deck.thickness() >= 0 && Double.isFinite(deck.thickness());
    double size = plane.visible().stream().mapToDouble(r -> r.shell().perimeter()).sum();
    boolean few =
        (plane.area() + plane.coveredArea()) / area <= MOST_SHEETS
            && size * plane.plane().areaFactor() / deck.sheetWidth() <= MOST_SHEETS;
    if (!(sheets && thick && few)) {
      problems.add(
          Problem.warning(
              plane.id(),
              Phrase.of("deck.sizes", PlaceName.of(part), PlaceName.of(part, plane.edge()))));
    }
    return sheets && thick && few;
  }

  /** More sheets than this on one plane are a slip in typing a size. */
  private static final double MOST_SHEETS = 4000;

  private Part part(RoofPlane plane) {
    return plan.part(plane.part())
        .orElseThrow(() -> new IllegalArgumentException("no part for plane " + plane.id()));
  }

  private Unfold unfold(RoofPlane plane) {
    return Unfold.of(plan.side(part(plane), plane.edge()), plane);
  }

  private Ground ground(FlushPlanes flush) {
    RoofPlane plane = flush.whole();
    Deck deck = part(plane).deck();
    Optional<Double> walkway = deck.walkway().filter(w -> w >= 0);
    return Ground.of(plane, unfold(plane), Panel.of(deck), walkway, beds(plane), lines(flush));
  }

  /** Lower planes that this plane's part lies over by an overlay. */
  private List<Ground.Bed> beds(RoofPlane plane) {
    List<Ground.Bed> beds = new ArrayList<>();
    for (Join join : plan.joins()) {
      if (join.method() == Join.Method.OVERLAY && join.upper().equals(plane.part())) {
        for (RoofPlane other : surface.planes()) {
          double thickness = part(other).deck().thickness();
          boolean solid = thickness >= 0 && Double.isFinite(thickness);
          if (other.part().equals(join.lower()) && !other.covered().isEmpty() && solid) {
            beds.add(new Ground.Bed(other, unfold(other), thickness));
          }
        }
      }
    }
    return beds;
  }

  /** Roof lines along the planes, with what lies beyond; not the seams between them. */
  private List<Ground.Line> lines(FlushPlanes flush) {
    List<Ground.Line> lines = new ArrayList<>();
    for (RoofLine line : surface.lines()) {
      List<String> others = line.planes().stream().filter(id -> !flush.ids().contains(id)).toList();
      boolean beside = others.size() < line.planes().size();
      if (beside && !(others.isEmpty() && line.planes().size() > 1)) {
        Optional<Unfold> beyond =
            others.stream().findFirst().flatMap(surface::plane).map(this::unfold);
        lines.add(new Ground.Line(line, beyond));
      }
    }
    return lines;
  }

  private static List<Support> flat(
      FlushPlanes flush, Map<String, List<Support>> supports, Unfold unfold) {
    return flush.ids().stream()
        .flatMap(id -> supports.getOrDefault(id, List.of()).stream())
        .map(s -> s.along(unfold.flat(s.line())))
        .toList();
  }

  private PlaneDeck bare(FlushPlanes flush, Ground ground, List<Support> flat) {
    List<CutDifference> differences = new ArrayList<>();
    for (Ground.Line line : lines(flush)) {
      LineKind kind = line.line().kind();
      Segment plan = new Segment(line.line().from().plan(), line.line().to().plan());
      Segment place = ground.unfold().flat(plan);
      boolean runsUp = Math.abs(place.to().y() - place.from().y()) > ground.panel().rounding();
      if ((kind == LineKind.HIP || kind == LineKind.VALLEY) && runsUp) {
        differences.add(CutDifference.of(line.line().id(), kind, place, ground.panel().width()));
      }
    }
    return new PlaneDeck(
        ground.plane().id(),
        flush.ids(),
        ground.unfold(),
        ground.panel(),
        ground.regions(),
        ground.rims(),
        flat,
        List.of(),
        List.of(),
        differences);
  }

  private static PlaneDeck laid(PlaneDeck bare, Laying laying, List<Piece> pieces) {
    return new PlaneDeck(
        bare.plane(),
        bare.planes(),
        bare.unfold(),
        bare.panel(),
        bare.ground(),
        bare.rims(),
        bare.supports(),
        laying.courses(),
        pieces,
        bare.cutDifferences());
  }

  private static int index(List<PlaneDeck> planes, String id) {
    for (int i = 0; i < planes.size(); i++) {
      if (planes.get(i).plane().equals(id)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no plane " + id);
  }

  private void note(Choice choice, Laying laying) {
    RoofPlane plane = choice.ground().plane();
    String where = plane.id();
    PlaceName wall = PlaceName.of(plan.part(plane.part()).orElseThrow(), plane.edge());
    if (choice.uprights().isEmpty()) {
      problems.add(Problem.note(where, Phrase.of("deck.noSupports", wall)));
    } else if (laying.kept() == JointChoice.Kept.NOTHING) {
      problems.add(joints(choice, Phrase.of("deck.unsupported", wall)));
    } else if (laying.kept() == JointChoice.Kept.SUPPORT) {
      problems.add(joints(choice, Phrase.of("deck.stagger", wall)));
    }
    Ripping.said(choice, wall, plan.unit()).ifPresent(problems::add);
    for (PieceEdge rim : choice.ground().rims()) {
      if (rim.use() == PieceEdge.Use.RAKE) {
        taper(rim, choice.ground().panel())
            .ifPresent(t -> problems.add(Problem.note(where, t.said(wall, plan.unit()))));
      }
    }
  }

  /** A fault of the joints, and where the first sheet may lie instead so that there is none. */
  private static Problem joints(Choice choice, Phrase wrong) {
    String where = choice.ground().plane().id();
    return OtherStart.of(choice)
        .map(
            start ->
                new Problem(
                    Problem.Level.WARNING, where, wrong, Phrase.of("deck.start." + start.key())))
        .orElseGet(() -> Problem.warning(where, wrong));
  }

  /**
   * A rake that is not square to the eave though it was surely meant to be: the last piece of every
   * course is tapered.
   *
   * @param off how far it runs over from end to end
   * @param length of the rake
   * @param per how far it runs over in the width of a sheet
   */
  private record Taper(double off, double length, double per) {
    Phrase said(PlaceName wall, LengthUnit unit) {
      return Phrase.of(
          "deck.taper",
          wall,
          new LengthFigure(off, unit),
          new LengthFigure(length, unit),
          new LengthFigure(per, unit));
    }
  }

  /** Off square by more than this many degrees a rake is meant to run so. */
  private static final double MEANT = 5;

  private static Optional<Taper> taper(PieceEdge rim, Panel panel) {
    double over = Math.abs(rim.line().to().x() - rim.line().from().x());
    double up = Math.abs(rim.line().to().y() - rim.line().from().y());
    boolean seen = over > panel.sliver() && rim.angle() <= MEANT;
    return seen
        ? Optional.of(new Taper(over, rim.length(), panel.width() * over / up))
        : Optional.empty();
  }

  /**
   * What can be done with one plane.
   *
   * @param lines where its courses begin and end
   * @param strips its courses
   * @param held for each strip, where joints find support
   * @param rhythms worth trying
   */
  record Choice(
      Ground ground,
      CourseLines lines,
      Uprights uprights,
      List<Strip> strips,
      List<double[]> held,
      List<JointChain> rhythms) {
    static Choice of(Ground ground, CourseLines lines, List<Support> flat, Deck.Start start) {
      Uprights uprights = new Uprights(flat, ground.panel());
      List<Strip> strips = Laying.strips(ground, lines);
      return new Choice(
          ground,
          lines,
          uprights,
          strips,
          strips.stream().map(s -> JointChoice.held(s, uprights, ground.panel())).toList(),
          strips.isEmpty()
              ? List.of(JointChain.NONE)
              : Rhythms.of(strips, uprights, start, ground.panel()));
    }

    Laying laying(JointChain rhythm) {
      return Laying.of(ground, strips, held, rhythm);
    }
  }
}
