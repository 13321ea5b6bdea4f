package longpoint.desktop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import longpoint.deck.Piece;
import longpoint.deck.PlaneDeck;
import longpoint.editor.Ref;
import longpoint.field.chalk.ChalkLine;
import longpoint.field.chalk.ChalkSheet;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.pipeline.Design;
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
    design.framing().trusses().forEach(things::truss);
    design.framing().marks().forEach(things::mark);
    design.framing().rafters().forEach(things::rafter);
    for (PlaneDeck deck : design.deck().planes()) {
      deck.pieces().forEach(p -> things.piece(deck, p));
    }
    design.chalk().forEach(things::chalk);
    return things;
  }

  Optional<Thing> thing(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  private void put(
      String id,
      Optional<Ref> home,
      Optional<String> plane,
      Optional<String> mark,
      Set<String> alike,
      List<List<Point>> places) {
    byId.put(id, new Thing(id, home, plane, mark, alike, places));
  }

  private void line(RoofLine line) {
    List<Point> place = List.of(line.from().plan(), line.to().plan());
    Optional<String> plane = line.planes().stream().findFirst();
    put(line.id(), Optional.empty(), plane, Optional.empty(), Set.of(), List.of(place));
  }

  private void truss(Truss truss) {
    put(
        truss.id(),
        Optional.of(Ref.part(truss.part())),
        Optional.empty(),
        Optional.of(truss.mark()),
        Set.of(),
        List.of(List.of(truss.from(), truss.to())));
  }

  private void mark(TrussMark mark) {
    Set<String> ids = new HashSet<>();
    Set<String> parts = new HashSet<>();
    List<List<Point>> places = new ArrayList<>();
    for (Truss truss : design.framing().trusses()) {
      if (truss.mark().equals(mark.mark())) {
        ids.add(truss.id());
        parts.add(truss.part());
        places.add(List.of(truss.from(), truss.to()));
      }
    }
    Optional<Ref> home =
        parts.size() == 1 ? parts.stream().findFirst().map(Ref::part) : Optional.empty();
    put(mark.mark(), home, Optional.empty(), Optional.of(mark.mark()), ids, places);
  }

  private void rafter(Rafter rafter) {
    List<List<Point>> places = new ArrayList<>();
    for (Segment place : rafter.places()) {
      places.add(List.of(place.from(), place.to()));
    }
    Optional<Ref> home = Optional.of(Ref.part(rafter.part()));
    put(rafter.mark(), home, Optional.empty(), Optional.empty(), Set.of(), places);
  }

  private void piece(PlaneDeck deck, Piece piece) {
    List<Point> round = new ArrayList<>(deck.unfold().plan(piece.outline()).shell().points());
    round.add(round.get(0));
    put(piece.id(), side(deck.plane()), deck(deck), Optional.empty(), Set.of(), List.of(round));
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
      put(
          sheet.lineId(number),
          side(sheet.plane()),
          Optional.of(sheet.plane()),
          Optional.empty(),
          Set.of(),
          places);
    }
  }

  private static Optional<String> deck(PlaneDeck deck) {
    return Optional.of(deck.plane());
  }

  private Optional<Ref> side(String plane) {
    return Sight.ref(design.plan(), plane);
  }
}
