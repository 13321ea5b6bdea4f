package longpoint.packet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Pen;
import longpoint.export.Solid;
import longpoint.pipeline.Design;
import longpoint.sheets.RoofNames;
import longpoint.sheets.solid.RoofSolid;
import longpoint.sheets.solid.SolidEdge;
import longpoint.sheets.solid.SolidFace;

/** The house in space for modelling programs: roof planes by their letters, walls, frame. */
final class HouseModel {
  private static final Layer ROOF = layer("A-ROOF-FACE", "Roof");
  private static final Layer WALLS = layer("A-WALL-FACE", "Walls");
  private static final Layer FASCIA = layer("A-ROOF-FASC", "Fascia");
  private static final Layer FRAME = layer("S-TRUS-LINE", "Frame");

  private final RoofNames names;
  private final Map<SolidFace.Kind, Map<String, List<Solid.Face>>> faces =
      new EnumMap<>(SolidFace.Kind.class);
  private final Map<String, List<Solid.Line>> lines = new LinkedHashMap<>();

  private static Layer layer(String name, String title) {
    return new Layer(name, title, Pen.solid(0.25), Ink.MAIN);
  }

  private HouseModel(RoofNames names) {
    this.names = names;
  }

  static Solid of(Design design) {
    RoofSolid house =
        RoofSolid.of(design.plan(), design.surface()).with(design.framing(), design.surface());
    HouseModel model = new HouseModel(new RoofNames(design.plan(), design.surface()));
    house.faces().forEach(model::face);
    house.edges().forEach(model::edge);
    return new Solid(FiguresText.title(design.plan()), design.plan().unit(), model.bodies());
  }

  private void face(SolidFace face) {
    String name =
        switch (face.kind()) {
          case ROOF -> "Plane " + names.plane(face.subject());
          case WALL -> "Wall " + face.subject();
          case FASCIA -> "Fascia " + names.plane(face.subject());
        };
    faces
        .computeIfAbsent(face.kind(), k -> new LinkedHashMap<>())
        .computeIfAbsent(name, n -> new ArrayList<>())
        .add(new Solid.Face(face.rings()));
  }

  private void edge(SolidEdge edge) {
    switch (edge.kind()) {
      case CHORD, WEB ->
          lines
              .computeIfAbsent(edge.subject(), s -> new ArrayList<>())
              .add(new Solid.Line(edge.from(), edge.to()));
      case ROOF, FASCIA, WALL -> {
        // These are the edges of faces, which are there.
      }
    }
  }

  private List<Solid.Body> bodies() {
    List<Solid.Body> all = new ArrayList<>();
    faces.forEach(
        (kind, bodies) ->
            bodies.forEach(
                (name, own) ->
                    all.add(new Solid.Body(name, layer(kind), finish(kind), own, List.of()))));
    lines.forEach(
        (subject, l) -> all.add(new Solid.Body(subject, FRAME, Solid.Finish.TIMBER, List.of(), l)));
    return all;
  }

  private static Layer layer(SolidFace.Kind kind) {
    return switch (kind) {
      case ROOF -> ROOF;
      case WALL -> WALLS;
      case FASCIA -> FASCIA;
    };
  }

  private static Solid.Finish finish(SolidFace.Kind kind) {
    return switch (kind) {
      case ROOF -> Solid.Finish.ROOF;
      case WALL -> Solid.Finish.WALL;
      case FASCIA -> Solid.Finish.FASCIA;
    };
  }
}
