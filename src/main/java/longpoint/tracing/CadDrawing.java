package longpoint.tracing;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import longpoint.geometry.Bounds;
import longpoint.plan.Problem;
import longpoint.tracing.Stroke.Vertex;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/**
 * A CAD drawing as far as wall outlines can be traced from it: lines, polylines, arcs, circles and
 * ellipses of the model, those of inserted blocks too. Read from DXF text of any version.
 *
 * <p>A drawing may come from a stranger: size, number of entities and nesting of blocks are
 * limited, and nothing outside the file is looked at.
 */
public final class CadDrawing {
  /** Sizes across that a building has, millimetres: what a drawing without a unit is guessed by. */
  private static final double SMALLEST = 2500;

  private static final double LARGEST = 120_000;

  private final List<Stroke> strokes;
  private final List<LayerSummary> layers;
  private final Optional<DrawingUnit> unit;
  private final DrawingUnit likelyUnit;
  private final List<Problem> notes;

  /**
   * A layer that holds something that can be traced.
   *
   * @param strokes how many lines and polylines stand on it
   * @param hidden whether the drawing has it switched off or frozen
   */
  public record LayerSummary(String name, int strokes, boolean hidden) {}

  private CadDrawing(DxfDocument document, DxfStrokes found) {
    strokes = List.copyOf(found.strokes());
    unit = document.variable("$INSUNITS").flatMap(DrawingUnit::ofNumber);
    layers = layers(strokes, document.hidden());
    likelyUnit = unit.orElseGet(() -> guess(document.variable("$MEASUREMENT").orElse(0) == 1));
    notes = notes(document, found);
  }

  /**
   * @throws TracingException if it is no DXF drawing that can be read; the message names the line
   */
  public static CadDrawing read(Path file) throws TracingException {
    try (InputStream in = Files.newInputStream(file)) {
      return read(in.readNBytes(DxfTagReader.MOST_BYTES + 1));
    } catch (TracingException e) {
      throw e;
    } catch (NoSuchFileException e) {
      throw TracingException.whole(Phrase.of("tracing.noFile", file.toString()), e);
    } catch (IOException e) {
      throw TracingException.whole(Phrase.of("tracing.notRead", file.toString()), e);
    }
  }

  /** As {@link #read(Path)}, from the bytes of the file. */
  public static CadDrawing read(byte[] bytes) throws TracingException {
    DxfDocument document = DxfDocument.read(bytes);
    return new CadDrawing(document, DxfStrokes.of(document));
  }

  /** Layers with something to trace, those with most on them first. */
  public List<LayerSummary> layers() {
    return layers;
  }

  /** The unit the drawing says it is drawn in. */
  public Optional<DrawingUnit> unit() {
    return unit;
  }

  /** The unit it says, or else the one that makes it the size of a building. */
  public DrawingUnit likelyUnit() {
    return likelyUnit;
  }

  /** Names with "wall" in them, else the layer with the largest outline, else nothing. */
  public Set<String> likelyLayers() {
    List<String> walls =
        layers.stream()
            .filter(l -> !l.hidden())
            .map(LayerSummary::name)
            .filter(n -> n.toLowerCase(java.util.Locale.ROOT).contains("wall"))
            .filter(n -> !outlines(Set.of(n), Traced.Gaps.CLOSED).isEmpty())
            .toList();
    if (!walls.isEmpty()) {
      return Set.copyOf(walls);
    }
    Set<String> shown =
        Set.copyOf(layers.stream().filter(l -> !l.hidden()).map(LayerSummary::name).toList());
    return Stream.of(Traced.Gaps.values())
        .flatMap(gaps -> outlines(shown, gaps).stream().limit(1))
        .findFirst()
        .map(o -> Set.of(o.layer()))
        .orElse(Set.of());
  }

  private List<Outline> outlines(Set<String> layers, Traced.Gaps gaps) {
    return trace(layers, likelyUnit, likelyUnit.planUnit(), gaps).outlines();
  }

  /**
   * Closed outlines of some layers. Ends that meet within an eighth of an inch are joined, arcs
   * become straight pieces, corners in the middle of a straight wall are dropped.
   *
   * @param layers names as in {@link #layers()}
   * @param drawn the unit of the drawing
   * @param plan the unit the outlines are wanted in
   */
  public Traced trace(Set<String> layers, DrawingUnit drawn, LengthUnit plan) {
    return trace(layers, drawn, plan, Traced.Gaps.LEFT_OPEN);
  }

  /**
   * As {@link #trace(Set, DrawingUnit, LengthUnit)}.
   *
   * @param gaps what becomes of lines that would close if their ends met
   */
  public Traced trace(Set<String> layers, DrawingUnit drawn, LengthUnit plan, Traced.Gaps gaps) {
    List<Stroke> chosen = strokes.stream().filter(s -> layers.contains(s.layer())).toList();
    Traced traced = Tracing.of(chosen, drawn.in(plan), plan, gaps);
    return new Traced(
        traced.outlines(),
        traced.gaps(),
        traced.lines(),
        Stream.concat(notes.stream(), traced.notes().stream()).toList());
  }

  private DrawingUnit guess(boolean metric) {
    List<Vertex> all = strokes.stream().flatMap(s -> s.vertices().stream()).toList();
    Bounds box = Bounds.of(all.stream().map(Vertex::at).toList());
    double size = Math.max(box.width(), box.height());
    List<DrawingUnit> order =
        metric
            ? List.of(DrawingUnit.MILLIMETRE, DrawingUnit.METRE, DrawingUnit.CENTIMETRE)
            : List.of(
                DrawingUnit.INCH, DrawingUnit.FOOT, DrawingUnit.MILLIMETRE, DrawingUnit.METRE);
    return order.stream()
        .filter(u -> size * u.in(LengthUnit.MILLIMETRE) >= SMALLEST)
        .filter(u -> size * u.in(LengthUnit.MILLIMETRE) <= LARGEST)
        .findFirst()
        .orElse(order.get(0));
  }

  private static List<LayerSummary> layers(List<Stroke> strokes, Set<String> hidden) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    strokes.forEach(s -> counts.merge(s.layer(), 1, Integer::sum));
    return counts.entrySet().stream()
        .map(e -> new LayerSummary(e.getKey(), e.getValue(), hidden.contains(e.getKey())))
        .sorted(
            Comparator.comparingInt(LayerSummary::strokes)
                .reversed()
                .thenComparing(LayerSummary::name))
        .toList();
  }

  private List<Problem> notes(DxfDocument document, DxfStrokes found) {
    List<Problem> all = new ArrayList<>();
    if (!document.isWhole()) {
      all.add(Problem.warning("plan", Phrase.of("tracing.short")));
    }
    if (unit.isEmpty()) {
      all.add(Problem.warning("plan", Phrase.of("tracing.unitless", likelyUnit.symbol())));
    }
    found
        .missed()
        .forEach((kind, n) -> all.add(Problem.note("plan", Phrase.of("tracing.missed", n, kind))));
    return all;
  }
}
