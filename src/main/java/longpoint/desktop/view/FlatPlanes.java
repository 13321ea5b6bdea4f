package longpoint.desktop.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.deck.PlaneDeck;
import longpoint.desktop.Picks;
import longpoint.desktop.Texts;
import longpoint.desktop.Thing;
import longpoint.drawing.Drawing;
import longpoint.field.chalk.ChalkSheet;
import longpoint.pipeline.Design;
import longpoint.sheets.ChalkView;
import longpoint.sheets.PlaneMarks;
import longpoint.sheets.Words;

/** Every plane of the deck laid flat, with its pieces and chalk lines. */
final class FlatPlanes implements DrawingSource {
  @Override
  public List<Item> items(Design design) {
    Map<String, String> letters = PlaneMarks.of(design.surface());
    return design.deck().planes().stream()
        .filter(p -> !p.pieces().isEmpty() || chalk(design, p).isPresent())
        .map(p -> new Item(p.plane(), title(p, letters)))
        .toList();
  }

  private static String title(PlaneDeck plane, Map<String, String> letters) {
    String names =
        plane.planes().stream()
            .map(id -> letters.getOrDefault(id, id))
            .collect(Collectors.joining(" + "));
    return Texts.of("flat.title", names, plane.pieces().size());
  }

  /** The plane of the piece, line or side picked. */
  @Override
  public Optional<String> wanted(Design design, Picks picks) {
    Stream<String> things = picks.things().stream().map(Thing::plane).flatMap(Optional::stream);
    List<String> shown = items(design).stream().map(Item::id).toList();
    return Stream.concat(things, picks.planes().stream())
        .flatMap(id -> design.deck().plane(id).stream())
        .map(PlaneDeck::plane)
        .filter(shown::contains)
        .findFirst();
  }

  @Override
  public Drawing draw(Design design, String id, double unitsPerMm) {
    return design
        .deck()
        .plane(id)
        .map(
            p ->
                ChalkView.of(
                        p,
                        chalk(design, p),
                        Words.of(design.plan().spoken(Texts.language())),
                        unitsPerMm)
                    .drawing())
        .orElse(new Drawing("", List.of()));
  }

  private static Optional<ChalkSheet> chalk(Design design, PlaneDeck plane) {
    return design.chalk().stream().filter(c -> c.plane().equals(plane.plane())).findFirst();
  }
}
