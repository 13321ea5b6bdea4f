package longpoint.desktop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.deck.Piece;
import longpoint.deck.PlaneDeck;
import longpoint.editor.Ref;
import longpoint.field.chalk.ChalkLine;
import longpoint.field.chalk.ChalkSheet;
import longpoint.field.lumber.Cut;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.packet.FiguresText;
import longpoint.pipeline.Design;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;

/** Everything of a design that can be picked by itself, by id. */
final class Things {
  private final Design design;
  private final Map<String, Thing> byId = new HashMap<>();

  private Things(Design design) {
    this.design = design;
  }

  static Things of(Design design) {
    Things things = new Things(design);
    design.surface().lines().forEach(things::line);
    things.kinds();
    design.framing().trusses().forEach(things::truss);
    design.framing().marks().forEach(things::mark);
    design.framing().rafters().forEach(things::rafter);
    things.runs();
    for (PlaneDeck deck : design.deck().planes()) {
      deck.pieces().forEach(p -> things.piece(deck, p));
    }
    design.chalk().forEach(things::chalk);
    design.lumber().cuts().forEach(things::cut);
    return things;
  }

  Optional<Thing> thing(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  private void put(Thing thing) {
    byId.put(thing.id(), thing);
  }

  private void line(RoofLine line) {
    Thing thing = Thing.of(line.id(), Optional.empty(), List.of(place(line)));
    put(
        line.planes().stream()
            .findFirst()
            .map(thing::onPlane)
            .orElse(thing)
            .toldBy(Set.of(FiguresText.kind(line.kind()))));
  }

  private static List<Point> place(RoofLine line) {
    return List.of(line.from().plan(), line.to().plan());
  }

  private static List<Point> place(Truss truss) {
    return List.of(truss.from(), truss.to());
  }

  /** All lines of a kind. */
  private void kinds() {
    for (LineKind kind : LineKind.values()) {
      List<RoofLine> lines =
          design.surface().lines().stream().filter(l -> l.kind() == kind).toList();
      put(
          Thing.of(
                  FiguresText.kind(kind),
                  Optional.empty(),
                  lines.stream().map(Things::place).toList())
              .with(lines.stream().map(RoofLine::id).collect(Collectors.toSet())));
    }
  }

  private void truss(Truss truss) {
    put(
        Thing.of(truss.id(), Optional.of(Ref.part(truss.part())), List.of(place(truss)))
            .marked(truss.mark())
            .toldBy(Set.of(truss.mark(), truss.run())));
  }

  private void mark(TrussMark mark) {
    List<Truss> trusses =
        design.framing().trusses().stream().filter(t -> t.mark().equals(mark.mark())).toList();
    List<String> parts = trusses.stream().map(Truss::part).distinct().toList();
    put(
        Thing.of(
                mark.mark(),
                parts.size() == 1 ? Optional.of(Ref.part(parts.get(0))) : Optional.empty(),
                trusses.stream().map(Things::place).toList())
            .marked(mark.mark())
            .with(trusses.stream().map(Truss::id).collect(Collectors.toSet())));
  }

  /** Sheets, which show every run by itself, call a rafter by its run and its mark. */
  private void rafter(Rafter rafter) {
    List<List<Point>> places = new ArrayList<>();
    for (Segment place : rafter.places()) {
      Segment whole = rafter.drawn(place);
      places.add(List.of(whole.from(), whole.to()));
    }
    String inRun = rafter.run() + ":" + rafter.mark();
    Thing thing =
        Thing.of(rafter.mark(), Optional.of(Ref.part(rafter.part())), places)
            .with(Set.of(inRun))
            .toldBy(Set.of(rafter.run()));
    put(thing);
    byId.put(inRun, thing);
  }

  /** Everything that stands in a run, as tape marks and ridge blocks tell of it. */
  private void runs() {
    Map<String, List<Thing>> standing = new LinkedHashMap<>();
    design.framing().trusses().forEach(t -> add(standing, t.run(), t.id()));
    design.framing().rafters().forEach(r -> add(standing, r.run(), r.mark()));
    standing.forEach(
        (run, things) -> {
          Set<String> ids = new HashSet<>();
          List<List<Point>> places = new ArrayList<>();
          for (Thing thing : things) {
            ids.add(thing.id());
            ids.addAll(thing.alike());
            places.addAll(thing.places());
          }
          put(Thing.of(run, things.get(0).home(), places).with(ids));
        });
  }

  private void add(Map<String, List<Thing>> standing, String run, String id) {
    standing.computeIfAbsent(run, r -> new ArrayList<>()).add(byId.get(id));
  }

  /** A board of the cut list, where it belongs; a rafter is there by its own mark. */
  private void cut(Cut cut) {
    if (byId.containsKey(cut.mark())) {
      return;
    }
    Set<String> ids = new HashSet<>();
    List<List<Point>> places = new ArrayList<>();
    for (String at : cut.at()) {
      Optional<Thing> thing = thing(at);
      thing.ifPresent(t -> places.addAll(t.places()));
      if (thing.isEmpty()) {
        side(at).ifPresent(s -> places.add(wall(s)));
      }
      ids.add(at);
    }
    put(Thing.of(cut.mark(), Optional.empty(), places).with(ids));
  }

  private List<Point> wall(Ref ref) {
    if (ref instanceof Ref.OfSide side) {
      Segment wall = design.plan().part(side.part()).orElseThrow().side(side.side());
      return List.of(wall.from(), wall.to());
    }
    return List.of();
  }

  private void piece(PlaneDeck deck, Piece piece) {
    List<Point> round = new ArrayList<>(deck.unfold().plan(piece.outline()).shell().points());
    round.add(round.get(0));
    put(Thing.of(piece.id(), side(deck.plane()), List.of(round)).onPlane(deck.plane()));
  }

  private void chalk(ChalkSheet sheet) {
    Optional<PlaneDeck> deck = design.deck().plane(sheet.plane());
    int number = 0;
    for (ChalkLine line : sheet.lines()) {
      number++;
      List<List<Point>> places = new ArrayList<>();
      deck.ifPresent(
          d ->
              places.add(
                  List.of(
                      d.unfold().plan(sheet.datum().onPlane(line.from())),
                      d.unfold().plan(sheet.datum().onPlane(line.to())))));
      put(Thing.of(sheet.lineId(number), side(sheet.plane()), places).onPlane(sheet.plane()));
    }
  }

  private Optional<Ref> side(String plane) {
    return Sight.ref(design.plan(), plane);
  }
}
