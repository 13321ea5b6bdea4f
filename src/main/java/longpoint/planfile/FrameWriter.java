package longpoint.planfile;

import static longpoint.planfile.PlanWriter.field;
import static longpoint.planfile.PlanWriter.number;
import static longpoint.planfile.PlanWriter.point;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.plan.CeilingStretch;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.FrameChoices;
import longpoint.plan.PlacedTruss;
import longpoint.plan.RunChoices;
import longpoint.plan.StickChoices;

/** Writes a part's frame; what is left to the program is left out. */
final class FrameWriter {
  private final List<String> known = new ArrayList<>();

  private FrameWriter() {}

  static String write(Frame frame) {
    FrameWriter writer = new FrameWriter();
    writer.word("method", frame.method().key());
    writer.add("spacing", number(frame.spacing()));
    writer.add("thickness", number(frame.thickness()));
    frame.hipSetback().ifPresent(h -> writer.add("hipSetback", number(h)));
    writer.choices(frame.choices());
    writer.sticks(frame.choices().sticks());
    writer.runs(frame.choices().runs());
    writer.list("placed", frame.placements().trusses().stream().map(FrameWriter::truss).toList());
    writer.places("leftOut", frame.placements().leftOut());
    writer.list(
        "ceilings", frame.placements().ceilings().stream().map(FrameWriter::ceiling).toList());
    writer.list("lifts", frame.placements().lifts().stream().map(HandlingWriter::lift).toList());
    return object(frame.extras(), writer.known);
  }

  private void choices(FrameChoices choices) {
    choices.ridge().ifPresent(r -> word("ridge", r.key()));
    choices.ceiling().ifPresent(c -> add("ceiling", PlanWriter.slope(c)));
    choices.haul().ifPresent(h -> add("haul", number(h)));
    choices.lookout().ifPresent(l -> word("lookout", l.key()));
    choices.lookoutPlaces().ifPresent(l -> word("lookoutPlaces", l.key()));
    choices.flats().ifPresent(f -> word("flats", f.key()));
    choices.girderPlies().ifPresent(n -> add("girderPlies", Integer.toString(n)));
  }

  private void sticks(StickChoices sticks) {
    sticks.plateWidth().ifPresent(w -> add("plateWidth", number(w)));
    sticks.post().ifPresent(w -> add("post", number(w)));
    sticks.ridgeEnds().ifPresent(e -> word("ridgeEnds", e.key()));
  }

  private void runs(RunChoices runs) {
    places("layoutFrom", runs.layoutFrom());
    runs.through().ifPresent(p -> add("through", point(p)));
    runs.legs().ifPresent(l -> word("legs", l.key()));
  }

  private static String truss(PlacedTruss truss) {
    List<String> fields = new ArrayList<>();
    fields.add(field("at", point(truss.at())));
    truss.to().ifPresent(to -> fields.add(field("to", point(to))));
    fields.add(field("kind", JsonText.quote(truss.kind().key())));
    fields.add(field("plies", Integer.toString(truss.plies())));
    return object(truss.extras(), fields);
  }

  private static String ceiling(CeilingStretch ceiling) {
    return object(
        ceiling.extras(),
        List.of(
            field("from", point(ceiling.from())),
            field("to", point(ceiling.to())),
            field("slope", PlanWriter.slope(ceiling.slope()))));
  }

  private void places(String key, List<Point> points) {
    list(key, points.stream().map(PlanWriter::point).toList());
  }

  private void list(String key, List<String> items) {
    if (!items.isEmpty()) {
      add(key, PlanWriter.row(items));
    }
  }

  private void word(String key, String word) {
    add(key, JsonText.quote(word));
  }

  private void add(String key, String json) {
    known.add(field(key, json));
  }

  private static String object(Extras extras, List<String> known) {
    return PlanWriter.line(PlanWriter.fields(extras, known.toArray(String[]::new)));
  }
}
