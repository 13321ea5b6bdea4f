package longpoint.desktop.view;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import longpoint.desktop.Picks;
import longpoint.desktop.Texts;
import longpoint.desktop.Thing;
import longpoint.drawing.Drawing;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;
import longpoint.pipeline.Design;
import longpoint.sheets.ProfileFigure;

/** Every truss to order, seen square to its face: shape only, not engineered. */
final class TrussOutlines implements DrawingSource {
  @Override
  public List<Item> items(Design design) {
    return design.framing().marks().stream().map(m -> new Item(m.mark(), title(m))).toList();
  }

  private static String title(TrussMark mark) {
    String kind = Texts.of("truss." + mark.kind().name().toLowerCase(Locale.ROOT));
    return Texts.of("outline.title", mark.mark(), kind, mark.quantity());
  }

  /** The truss picked, else one that stands on the part picked. */
  @Override
  public Optional<String> wanted(Design design, Picks picks) {
    Optional<String> own =
        picks.things().stream().map(Thing::mark).flatMap(Optional::stream).findFirst();
    Predicate<Truss> onPart = t -> picks.parts().contains(t.part());
    return own.or(
        () -> design.framing().trusses().stream().filter(onPart).map(Truss::mark).findFirst());
  }

  @Override
  public Drawing draw(Design design, String id, double unitsPerMm) {
    return design.framing().marks().stream()
        .filter(m -> m.mark().equals(id))
        .findFirst()
        .map(m -> ProfileFigure.drawing(design.plan().spoken(Texts.language()), m, unitsPerMm))
        .orElse(new Drawing("", List.of()));
  }
}
