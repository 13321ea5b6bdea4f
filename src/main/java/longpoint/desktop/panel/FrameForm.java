package longpoint.desktop.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import longpoint.desktop.Texts;
import longpoint.editor.PartCommands;
import longpoint.editor.ToolRunner;
import longpoint.framing.run.FoundRuns;
import longpoint.framing.run.Run;
import longpoint.framing.run.RunFinder;
import longpoint.geometry.Point;
import longpoint.plan.Frame;
import longpoint.plan.FrameChoices;
import longpoint.plan.Part;
import longpoint.plan.PlacedTruss.Kind;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
import longpoint.plan.StickChoices;
import longpoint.plan.StickChoices.RidgeEnds;
import longpoint.units.EntryException;
import longpoint.units.LengthEntry;
import longpoint.units.SlopeEntry;
import longpoint.units.SlopeText;

/**
 * What is seldom said about a frame: folded away until it is asked for, and then left open. How an
 * outline of several legs is split is always in sight, since it waits for an answer.
 */
final class FrameForm {
  /** Plies of a girder that the user places without saying how many. */
  private static final int PLIES = 2;

  private final ToolRunner runner;
  private final List<String> ids;
  private final Form form;

  private FrameForm(Form form, ToolRunner runner, List<String> ids) {
    this.runner = runner;
    this.ids = ids;
    this.form = form;
  }

  static void add(Form to, ToolRunner runner, List<String> ids) {
    FrameForm more = new FrameForm(to, runner, ids);
    if (ids.size() == 1) {
      LegsRow legs = new LegsRow(runner, ids.get(0));
      to.across(legs);
      to.also(legs::update);
    }
    to.fold("frame.more", more::rows);
  }

  private void rows() {
    choices();
    if (ids.size() == 1) {
      runs().forEach(this::placesOf);
    }
  }

  private void choices() {
    form.choice(
        "ridgeWay",
        List.of(FrameChoices.Ridge.values()),
        r -> Texts.of("ridgeWay." + r.key()),
        () -> shared(f -> f.choices().ridge().orElse(FrameChoices.Ridge.LOW)),
        r -> choose(c -> c.withRidge(r)));
    form.entry(
            "ceiling",
            SlopeEntry::read,
            s -> choose(c -> c.withCeiling(s)),
            () -> shared(f -> f.choices().ceiling()).flatMap(s -> s).map(SlopeText::exact),
            () -> Texts.of("field.ceiling.level"))
        .orEmpty(() -> choose(c -> c.withCeiling(Optional.empty())));
    form.entry(
            "haul",
            t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.POSITIVE),
            h -> choose(c -> c.withHaul(h)),
            () -> shared(f -> f.choices().haul()).flatMap(h -> h).map(this::exact),
            () -> Texts.of("field.automatic"))
        .orEmpty(() -> choose(c -> c.withHaul(Optional.empty())));
    form.choice(
        "girderPlies",
        List.of(1, 2, 3, 4),
        n -> Integer.toString(n),
        () -> shared(f -> f.choices().girderPlies().orElse(1)),
        n -> choose(c -> c.withGirderPlies(n)));
    form.choice(
        "flats",
        List.of(FrameChoices.Flats.values()),
        f -> Texts.of("flats." + f.key()),
        () -> shared(f -> f.choices().flats().orElse(FrameChoices.Flats.FLUSH)),
        f -> choose(c -> c.withFlats(f)));
    form.choice(
        "lookout",
        List.of(FrameChoices.Lookout.values()),
        l -> Texts.of("lookout." + l.key()),
        () -> shared(f -> f.choices().lookout().orElse(FrameChoices.Lookout.FLAT)),
        l -> choose(c -> c.withLookout(l)));
    form.choice(
        "lookoutPlaces",
        List.of(FrameChoices.LookoutPlaces.values()),
        l -> Texts.of("lookoutPlaces." + l.key()),
        () -> shared(f -> f.choices().lookoutPlaces().orElse(FrameChoices.LookoutPlaces.SPACING)),
        l -> choose(c -> c.withLookoutPlaces(l)));
    sticks();
  }

  /** What rafters are cut by. */
  private void sticks() {
    form.entry(
            "plateWidth",
            t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.POSITIVE),
            w -> chooseSticks(s -> s.withPlateWidth(Optional.of(w))),
            () -> shared(f -> f.choices().sticks().plateWidth()).flatMap(w -> w).map(this::exact),
            () -> exact(StickChoices.NONE.plateWidth(plan().unit())))
        .orEmpty(() -> chooseSticks(s -> s.withPlateWidth(Optional.empty())));
    form.entry(
            "post",
            t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.POSITIVE),
            w -> chooseSticks(s -> s.withPost(Optional.of(w))),
            () -> shared(f -> f.choices().sticks().post()).flatMap(w -> w).map(this::exact),
            () -> Texts.of("field.post.none"))
        .orEmpty(() -> chooseSticks(s -> s.withPost(Optional.empty())));
    form.choice(
        "ridgeEnds",
        List.of(RidgeEnds.values()),
        e -> Texts.of("ridgeEnds." + e.key()),
        () -> shared(f -> f.choices().sticks().ridgeEnds().orElse(RidgeEnds.HIPS)),
        e -> chooseSticks(s -> s.withRidgeEnds(e)));
  }

  private void chooseSticks(UnaryOperator<StickChoices> change) {
    choose(c -> c.withSticks(change.apply(c.sticks())));
  }

  private void placesOf(Run run) {
    String id = run.id();
    if (runs().size() > 1) {
      int number = runs().indexOf(run) + 1;
      form.across(new Words(Words.Rank.QUIET, Texts.of("form.frame.run", number)));
    }
    form.choice(
        "layoutFrom",
        ends().names(run),
        n -> Texts.of("way." + n),
        () -> run(id).map(ends()::start),
        n -> run(id).ifPresent(r -> startFrom(r, n)));
    list(
        "placedTrusses",
        id,
        p -> p.trusses(Kind.TRUSS),
        (p, t) -> {
          var read = p.readTrusses(t, Kind.TRUSS, 1);
          return all -> p.withTrusses(all, read, Kind.TRUSS);
        });
    list(
        "placedGirders",
        id,
        p -> p.trusses(Kind.GIRDER),
        (p, t) -> {
          var read = p.readTrusses(t, Kind.GIRDER, PLIES);
          return all -> p.withTrusses(all, read, Kind.GIRDER);
        });
    list(
        "crossGirders",
        id,
        RunPlaces::crossing,
        (p, t) -> {
          var read = p.readCrossing(t, PLIES);
          return all -> p.withCrossing(all, read);
        });
    list(
        "leftOut",
        id,
        RunPlaces::leftOut,
        (p, t) -> {
          var read = p.readLeftOut(t);
          return all -> p.withLeftOut(all, read);
        });
    list(
        "ceilings",
        id,
        RunPlaces::ceilings,
        (p, t) -> {
          var read = p.readCeilings(t);
          return all -> p.withCeilings(all, read);
        });
    list(
        "lifts",
        id,
        RunPlaces::lifts,
        (p, t) -> {
          var read = p.readLifts(t);
          return all -> p.withLifts(all, read);
        });
  }

  /** Reads a list typed for a run as a change of what is placed in its part. */
  private interface ListReading {
    UnaryOperator<Placements> read(RunPlaces places, String typed) throws EntryException;
  }

  private void list(
      String name, String run, Function<RunPlaces, String> text, ListReading reading) {
    EntryField.Reading<UnaryOperator<Placements>> read =
        t -> {
          Optional<RunPlaces> places = places(run);
          return places.isPresent() ? reading.read(places.get(), t) : all -> all;
        };
    form.entry(
            name, read, this::place, () -> places(run).map(text), () -> Texts.of("field.list.none"))
        .orEmpty(
            () -> {
              try {
                place(read.read(""));
              } catch (EntryException e) {
                throw new IllegalStateException("an empty list can be read", e);
              }
            });
  }

  private void place(UnaryOperator<Placements> change) {
    frame(f -> f.withPlacements(change.apply(f.placements())));
  }

  private RunEnds ends() {
    return new RunEnds(runner.document().plan());
  }

  /** Hooks the tape on the end of a run that lies that way. */
  private void startFrom(Run run, String way) {
    Point end = ends().end(run, way);
    List<Point> kept = new ArrayList<>();
    for (Point p : part().map(x -> x.frame().choices().runs().layoutFrom()).orElse(List.of())) {
      if (!RunEnds.belongs(p, run)) {
        kept.add(p);
      }
    }
    kept.add(end);
    choose(c -> c.withRuns(c.runs().withLayoutFrom(kept)));
  }

  private void choose(UnaryOperator<FrameChoices> change) {
    frame(f -> f.withChoices(change.apply(f.choices())));
  }

  private void frame(UnaryOperator<Frame> change) {
    runner.apply(PartCommands.frame(plan(), ids, change));
  }

  private List<Run> runs() {
    FoundRuns found = RunFinder.find(plan());
    return found.runs().stream().filter(r -> ids.contains(r.part().id())).toList();
  }

  private Optional<Run> run(String id) {
    return runs().stream().filter(r -> r.id().equals(id)).findFirst();
  }

  private Optional<RunPlaces> places(String run) {
    List<Run> all = runs();
    return all.stream()
        .filter(r -> r.id().equals(run))
        .findFirst()
        .map(r -> new RunPlaces(r, all, plan().unit()));
  }

  private Optional<Part> part() {
    return plan().part(ids.get(0));
  }

  private <T> Optional<T> shared(Function<Frame, T> of) {
    List<Part> parts = ids.stream().flatMap(id -> plan().part(id).stream()).toList();
    return Shared.value(parts, p -> of.apply(p.frame()));
  }

  private String exact(double length) {
    return Editable.length(length, plan().unit());
  }

  private Plan plan() {
    return runner.document().plan();
  }
}
