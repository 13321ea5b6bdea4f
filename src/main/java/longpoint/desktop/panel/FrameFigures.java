package longpoint.desktop.panel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import longpoint.desktop.Texts;
import longpoint.framing.FramingSet;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Segment;
import longpoint.pipeline.Design;
import longpoint.units.LengthUnit;

/**
 * Trusses and rafters as rows of figures: each mark once, with its count in the parts asked for.
 */
final class FrameFigures {
  private FrameFigures() {}

  /**
   * @param parts ids of the parts whose frame is wanted
   */
  static List<Figure> of(Design design, Set<String> parts, LengthDisplay display) {
    List<Figure> rows = new ArrayList<>();
    FramingSet framing = design.framing();
    LengthUnit unit = design.plan().unit();
    Map<String, List<Segment>> places = new LinkedHashMap<>();
    for (Truss truss : framing.trusses()) {
      if (parts.contains(truss.part())) {
        places
            .computeIfAbsent(truss.mark(), m -> new ArrayList<>())
            .add(new Segment(truss.from(), truss.to()));
      }
    }
    if (!places.isEmpty()) {
      int count = places.values().stream().mapToInt(List::size).sum();
      rows.add(new Figure.Heading(Texts.of("figures.trusses"), Texts.of("figures.pieces", count)));
    }
    for (TrussMark mark : framing.marks()) {
      if (places.containsKey(mark.mark())) {
        rows.add(row(mark, places.get(mark.mark()), unit, display));
      }
    }
    rows.addAll(rafters(framing, parts, unit, display));
    return rows;
  }

  private static Figure row(
      TrussMark mark, List<Segment> places, LengthUnit unit, LengthDisplay display) {
    String kind = Texts.of("truss." + mark.kind().name().toLowerCase(Locale.ROOT));
    return new Figure.OfFrame(
        places,
        Texts.of("figures.mark", places.size(), mark.mark(), kind),
        display.of(mark.span(), unit),
        Texts.of("figures.truss.small", display.of(mark.height(), unit)));
  }

  private static List<Figure> rafters(
      FramingSet framing, Set<String> parts, LengthUnit unit, LengthDisplay display) {
    List<Figure> rows = new ArrayList<>();
    for (Rafter rafter : framing.rafters()) {
      if (parts.contains(rafter.part())) {
        if (rows.isEmpty()) {
          rows.add(new Figure.Heading(Texts.of("figures.rafters"), ""));
        }
        String kind = Texts.of("rafter." + rafter.kind().name().toLowerCase(Locale.ROOT));
        rows.add(
            new Figure.OfFrame(
                rafter.places(),
                Texts.of("figures.mark", rafter.quantity(), rafter.mark(), kind),
                display.of(rafter.length(), unit),
                Texts.of("figures.rafter.small", display.of(rafter.tail(), unit))));
      }
    }
    return rows;
  }
}
