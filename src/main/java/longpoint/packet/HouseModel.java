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
import longpoint.sheets.Words;
import longpoint.sheets.solid.RoofSolid;
import longpoint.sheets.solid.SolidEdge;
import longpoint.sheets.solid.SolidFace;

/** The house in space for modelling programs: roof planes by their letters, walls, frame. */
final class HouseModel {
  private final RoofNames names;
  private final Words words;
  private final Map<SolidFace.Kind, Map<String, List<Solid.Face>>> faces =
      new EnumMap<>(SolidFace.Kind.class);
  private final Map<String, List<Solid.Line>> lines = new LinkedHashMap<>();

  private Layer layer(String name, String key) {
    return new Layer(name, words.text(key), Pen.solid(0.25), Ink.MAIN);
  }

  private HouseModel(RoofNames names) {
    this.names = names;
    this.words = names.words().from("packet");
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
          case ROOF -> words.text("house.plane", names.plane(face.subject()));
          case WALL -> names.wall(face.subject());
          case FASCIA -> words.text("house.fascia.of", names.plane(face.subject()));
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
    Layer frame = layer("S-TRUS-LINE", "house.frame");
    lines.forEach(
        (subject, l) -> all.add(new Solid.Body(subject, frame, Solid.Finish.TIMBER, List.of(), l)));
    return all;
  }

  private Layer layer(SolidFace.Kind kind) {
    return switch (kind) {
      case ROOF -> layer("A-ROOF-FACE", "house.roof");
      case WALL -> layer("A-WALL-FACE", "house.walls");
      case FASCIA -> layer("A-ROOF-FASC", "house.fascia");
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
