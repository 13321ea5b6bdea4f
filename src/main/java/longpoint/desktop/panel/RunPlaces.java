package longpoint.desktop.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.framing.run.Run;
import longpoint.framing.truss.OwnPlaces;
import longpoint.geometry.Point;
import longpoint.plan.CeilingStretch;
import longpoint.plan.Extras;
import longpoint.plan.Lift;
import longpoint.plan.PlacedTruss;
import longpoint.plan.PlacedTruss.Kind;
import longpoint.plan.Placements;
import longpoint.units.EntryException;
import longpoint.units.LengthEntry;
import longpoint.units.LengthEntry.Allowed;
import longpoint.units.LengthList;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.SlopeEntry;
import longpoint.units.SlopeText;
import longpoint.wording.Phrase;

/**
 * What the user put into one run, as lists to type in: stations from where its layout starts, in
 * from its first bearing wall, with the number of plies after a cross.
 *
 * @param runs of the whole plan
 */
record RunPlaces(Run run, List<Run> runs, LengthUnit unit) {
  private static final Pattern PLIES = Pattern.compile("(.*?)(?:\\s*[x×]\\s*([1-9]))?");
  private static final Pattern STRETCH = Pattern.compile("(.+?)\\.\\.(.+?):(.+)");
  private static final Pattern ACROSS =
      Pattern.compile("(.+?):(.+?)\\.\\.(.+?)(?:\\s*[x×]\\s*([1-9]))?");

  private Placements own() {
    return OwnPlaces.of(run, runs);
  }

  /** A change of one list: those of this run replaced, those of other runs kept. */
  private static <T> List<T> replaced(List<T> all, List<T> own, List<T> by) {
    return Stream.concat(all.stream().filter(t -> !own.contains(t)), by.stream()).toList();
  }

  Placements withTrusses(Placements all, List<PlacedTruss> trusses, Kind kind) {
    List<PlacedTruss> own =
        own().trusses().stream().filter(t -> t.to().isEmpty() && t.kind() == kind).toList();
    List<PlacedTruss> kept = Retyped.list(own, trusses, t -> station(t.at()), this::kept);
    return all.withTrusses(replaced(all.trusses(), own, kept));
  }

  Placements withCrossing(Placements all, List<PlacedTruss> girders) {
    List<PlacedTruss> own = own().trusses().stream().filter(t -> t.to().isPresent()).toList();
    List<PlacedTruss> kept = Retyped.list(own, girders, this::crossing, this::keptCrossing);
    return all.withTrusses(replaced(all.trusses(), own, kept));
  }

  Placements withLeftOut(Placements all, List<Point> places) {
    List<Point> own = own().leftOut();
    return all.withLeftOut(
        replaced(all.leftOut(), own, Retyped.list(own, places, this::station, this::kept)));
  }

  Placements withCeilings(Placements all, List<CeilingStretch> ceilings) {
    List<CeilingStretch> own = own().ceilings();
    return all.withCeilings(
        replaced(all.ceilings(), own, Retyped.list(own, ceilings, this::stretch, this::kept)));
  }

  Placements withLifts(Placements all, List<Lift> lifts) {
    List<Lift> own = own().lifts();
    LiftList list = new LiftList(run, unit);
    return all.withLifts(
        replaced(all.lifts(), own, Retyped.list(own, lifts, list::place, list::kept)));
  }

  String lifts() {
    return new LiftList(run, unit).text(own().lifts());
  }

  List<Lift> readLifts(String typed) throws EntryException {
    return new LiftList(run, unit).read(typed);
  }

  private PlacedTruss kept(PlacedTruss before, PlacedTruss typed) {
    return new PlacedTruss(
        kept(before.at(), typed.at()),
        Optional.empty(),
        typed.kind(),
        typed.plies(),
        before.extras());
  }

  private PlacedTruss keptCrossing(PlacedTruss before, PlacedTruss typed) {
    boolean there = crossing(before).equals(crossing(typed));
    return new PlacedTruss(
        there ? before.at() : typed.at(),
        there ? before.to() : typed.to(),
        typed.kind(),
        typed.plies(),
        before.extras());
  }

  private CeilingStretch kept(CeilingStretch before, CeilingStretch typed) {
    return new CeilingStretch(
        kept(before.from(), typed.from()),
        kept(before.to(), typed.to()),
        typed.slope(),
        before.extras());
  }

  /** The list shows stations only: where across the run a place lies stays as it was. */
  private Point kept(Point before, Point typed) {
    return station(before).equals(station(typed))
        ? before
        : run.axes().at(run.axes().u(typed), run.axes().v(before));
  }

  String trusses(Kind kind) {
    return own().trusses().stream()
        .filter(t -> t.to().isEmpty() && t.kind() == kind)
        .map(t -> station(t.at()) + plies(t, kind))
        .collect(Collectors.joining("; "));
  }

  String crossing() {
    return own().trusses().stream()
        .filter(t -> t.to().isPresent())
        .map(t -> crossing(t) + plies(t, Kind.GIRDER))
        .collect(Collectors.joining("; "));
  }

  private String crossing(PlacedTruss girder) {
    return exact(run.axes().v(girder.at()))
        + ": "
        + station(girder.at())
        + ".."
        + station(girder.to().orElseThrow());
  }

  String leftOut() {
    return own().leftOut().stream().map(this::station).collect(Collectors.joining("; "));
  }

  String ceilings() {
    return own().ceilings().stream()
        .map(c -> stretch(c) + ": " + SlopeText.exact(c.slope()))
        .collect(Collectors.joining("; "));
  }

  private String stretch(CeilingStretch ceiling) {
    return station(ceiling.from()) + ".." + station(ceiling.to());
  }

  private static String plies(PlacedTruss truss, Kind kind) {
    return kind == Kind.GIRDER || truss.plies() > 1 ? " x" + truss.plies() : "";
  }

  private String station(Point place) {
    return exact(run.axes().u(place));
  }

  private String exact(double length) {
    return LengthText.exact(length, unit);
  }

  List<PlacedTruss> readTrusses(String typed, Kind kind, int usual) throws EntryException {
    List<PlacedTruss> trusses = new ArrayList<>();
    for (LengthList.Part part : LengthList.parts(typed)) {
      Matcher m = matching(part, PLIES, "list.station");
      trusses.add(
          new PlacedTruss(
              at(part, m, 1), Optional.empty(), kind, plies(m.group(2), usual), Extras.NONE));
    }
    return trusses;
  }

  List<PlacedTruss> readCrossing(String typed, int usual) throws EntryException {
    List<PlacedTruss> girders = new ArrayList<>();
    for (LengthList.Part part : LengthList.parts(typed)) {
      Matcher m = matching(part, ACROSS, "list.crossing");
      double v = length(part, m, 1);
      girders.add(
          PlacedTruss.girder(
              run.axes().at(length(part, m, 2), v),
              run.axes().at(length(part, m, 3), v),
              plies(m.group(4), usual)));
    }
    return girders;
  }

  List<Point> readLeftOut(String typed) throws EntryException {
    return LengthList.read(typed, unit, Allowed.NOT_NEGATIVE).stream().map(this::middle).toList();
  }

  List<CeilingStretch> readCeilings(String typed) throws EntryException {
    List<CeilingStretch> ceilings = new ArrayList<>();
    for (LengthList.Part part : LengthList.parts(typed)) {
      Matcher m = matching(part, STRETCH, "list.stretch");
      ceilings.add(
          new CeilingStretch(
              at(part, m, 1),
              at(part, m, 2),
              part.sub(m.start(3), m.end(3)).read(SlopeEntry::read),
              Extras.NONE));
    }
    return ceilings;
  }

  private static Matcher matching(LengthList.Part part, Pattern pattern, String wrong)
      throws EntryException {
    Matcher m = pattern.matcher(part.text());
    if (!m.matches()) {
      throw part.wrong(Phrase.of("units." + wrong));
    }
    return m;
  }

  private static int plies(String typed, int usual) {
    return typed == null ? usual : Integer.parseInt(typed);
  }

  private Point at(LengthList.Part part, Matcher m, int group) throws EntryException {
    return middle(length(part, m, group));
  }

  private double length(LengthList.Part part, Matcher m, int group) throws EntryException {
    return part.sub(m.start(group), m.end(group))
        .read(t -> LengthEntry.read(t, unit, Allowed.NOT_NEGATIVE));
  }

  private Point middle(double station) {
    return run.axes().at(station, run.width() / 2);
  }
}
