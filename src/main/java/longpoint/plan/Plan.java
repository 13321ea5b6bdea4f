package longpoint.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import longpoint.units.LengthUnit;
import longpoint.wording.Language;

/**
 * Everything the user has drawn.
 *
 * @param unit of every length in the plan
 * @param title of the job
 * @param parts in the order they were drawn; order has no meaning for the roof
 * @param joins between parts
 * @param defaults for whatever a side leaves open
 * @param buying what the user decides about what is bought
 * @param markup notes, dimensions and a picture beneath, which the roof has nothing to do with
 * @param particulars for the title block of its sheets
 * @param handling what the user knows of weights, loads and restraint
 * @param onSite what was measured or delivered, to be held against the plan
 */
public record Plan(
    LengthUnit unit,
    String title,
    List<Part> parts,
    List<Join> joins,
    Defaults defaults,
    Buying buying,
    Markup markup,
    Particulars particulars,
    Handling handling,
    OnSite onSite,
    Extras extras) {
  public Plan {
    Objects.requireNonNull(unit);
    Objects.requireNonNull(title);
    parts = List.copyOf(parts);
    joins = List.copyOf(joins);
    Objects.requireNonNull(defaults);
    Objects.requireNonNull(buying);
    Objects.requireNonNull(markup);
    Objects.requireNonNull(particulars);
    Objects.requireNonNull(handling);
    Objects.requireNonNull(onSite);
    Objects.requireNonNull(extras);
  }

  /** A plan with nothing on the sheet besides the building. */
  public Plan(
      LengthUnit unit,
      String title,
      List<Part> parts,
      List<Join> joins,
      Defaults defaults,
      Extras extras) {
    this(
        unit,
        title,
        parts,
        joins,
        defaults,
        Buying.of(unit),
        Markup.NONE,
        Particulars.NONE,
        Handling.NONE,
        OnSite.NONE,
        extras);
  }

  public static Plan empty(LengthUnit unit) {
    return new Plan(unit, "", List.of(), List.of(), Defaults.of(unit), Extras.NONE);
  }

  public Optional<Part> part(String id) {
    return parts.stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /**
   * A side with every default filled in.
   *
   * @param part one of this plan's parts
   * @param side 0 to the part's side count − 1
   */
  public Side side(Part part, int side) {
    return side(part, side, part.edges().get(side).heel().orElseGet(() -> usualHeel(part)));
  }

  private Side side(Part part, int side, double heel) {
    Edge edge = part.edges().get(side);
    return new Side(
        part.id(),
        side,
        edge.kind(),
        part.side(side),
        edge.slope().orElse(defaults.slope()),
        edge.overhang().orElse(defaults.overhang()),
        heel,
        part.plateHeight(),
        defaults.fascia(),
        edge.inLine());
  }

  /** The heel of the sides of a part that have none of their own. */
  public double usualHeel(Part part) {
    return defaults.heel().orElseGet(() -> UsualHeel.of(this, part));
  }

  /** Every side of a part with every default filled in, in order. */
  public List<Side> sides(Part part) {
    List<Side> sides = new ArrayList<>(part.sideCount());
    double usual = usualHeel(part);
    for (int i = 0; i < part.sideCount(); i++) {
      sides.add(side(part, i, part.edges().get(i).heel().orElse(usual)));
    }
    return sides;
  }

  public Plan withUnit(LengthUnit unit) {
    Buying usual = buying.equals(Buying.of(this.unit)) ? Buying.of(unit) : buying;
    return new Plan(
        unit, title, parts, joins, defaults, usual, markup, particulars, handling, onSite, extras);
  }

  public Plan withTitle(String title) {
    return new Plan(
        unit, title, parts, joins, defaults, buying, markup, particulars, handling, onSite, extras);
  }

  /** The plan with other parts; dimensions keep to the corners they hold on to. */
  public Plan withParts(List<Part> parts) {
    CornerTrace trace = new CornerTrace(this, parts);
    Markup followed = markup.withCorners(trace::end);
    OnSite kept = onSite.withCorners(trace::corner);
    return new Plan(
        unit, title, parts, joins, defaults, buying, followed, particulars, handling, kept, extras);
  }

  public Plan withJoins(List<Join> joins) {
    return new Plan(
        unit, title, parts, joins, defaults, buying, markup, particulars, handling, onSite, extras);
  }

  public Plan withDefaults(Defaults defaults) {
    return new Plan(
        unit, title, parts, joins, defaults, buying, markup, particulars, handling, onSite, extras);
  }

  public Plan withMarkup(Markup markup) {
    return new Plan(
        unit, title, parts, joins, defaults, buying, markup, particulars, handling, onSite, extras);
  }

  public Plan withParticulars(Particulars particulars) {
    return new Plan(
        unit, title, parts, joins, defaults, buying, markup, particulars, handling, onSite, extras);
  }

  /** What its sheets, lists and pages are written in: English unless the plan says otherwise. */
  public Language language() {
    return particulars.language().orElse(Language.ENGLISH);
  }

  /** The plan with its own language, or with this one where it names none. */
  public Plan spokenElse(Language language) {
    return particulars.language().isPresent() ? this : spoken(language);
  }

  /** The plan with everything made of it written in a language. */
  public Plan spoken(Language language) {
    return withParticulars(particulars.withLanguage(Optional.of(language)));
  }

  public Plan withBuying(Buying buying) {
    return new Plan(
        unit, title, parts, joins, defaults, buying, markup, particulars, handling, onSite, extras);
  }

  public Plan withHandling(Handling handling) {
    return new Plan(
        unit, title, parts, joins, defaults, buying, markup, particulars, handling, onSite, extras);
  }

  public Plan withOnSite(OnSite onSite) {
    return new Plan(
        unit, title, parts, joins, defaults, buying, markup, particulars, handling, onSite, extras);
  }

  public Plan withExtras(Extras extras) {
    return new Plan(
        unit, title, parts, joins, defaults, buying, markup, particulars, handling, onSite, extras);
  }

  /** The plan with the part of the same id replaced, or the part added if there is none. */
  public Plan withPart(Part part) {
    List<Part> changed = new ArrayList<>(parts);
    for (int i = 0; i < changed.size(); i++) {
      if (changed.get(i).id().equals(part.id())) {
        changed.set(i, part);
        return withParts(changed);
      }
    }
    changed.add(part);
    return withParts(changed);
  }

  /** The plan without a part and without the joins that named it. */
  public Plan withoutPart(String id) {
    return withParts(parts.stream().filter(p -> !p.id().equals(id)).toList())
        .withJoins(
            joins.stream().filter(j -> !j.upper().equals(id) && !j.lower().equals(id)).toList());
  }

  /** The plan with a part under another id, in the joins too. */
  public Plan withPartRenamed(String from, String to) {
    UnaryOperator<String> name = id -> id.equals(from) ? to : id;
    List<Part> renamed = parts.stream().map(p -> p.withId(name.apply(p.id()))).toList();
    Markup followed =
        markup.withCorners(
            c -> Optional.of(new PlanDimension.Corner(name.apply(c.part()), c.corner())));
    OnSite kept =
        onSite.withCorners(
            c -> Optional.of(new PlanDimension.Corner(name.apply(c.part()), c.corner())));
    return new Plan(
            unit,
            title,
            renamed,
            joins,
            defaults,
            buying,
            followed,
            particulars,
            handling,
            kept,
            extras)
        .withJoins(
            joins.stream()
                .map(j -> j.between(name.apply(j.upper()), name.apply(j.lower())))
                .toList());
  }

  /** The first of {@code stem}, {@code stem-2}, {@code stem-3}, … that no part has for its id. */
  public String freshId(String stem) {
    String id = stem;
    for (int n = 2; part(id).isPresent(); n++) {
      id = stem + "-" + n;
    }
    return id;
  }
}
