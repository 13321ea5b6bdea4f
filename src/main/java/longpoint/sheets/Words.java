package longpoint.sheets;

import java.util.Locale;
import java.util.Objects;
import longpoint.deck.Piece;
import longpoint.drawing.Layer;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Rounding;
import longpoint.units.Slope;
import longpoint.units.SlopeText;
import longpoint.wording.Language;
import longpoint.wording.Phrasebook;
import longpoint.wording.Spacing;
import longpoint.wording.Worded;

/**
 * The words and figures of everything made of one plan: its language, its unit. Passed down to
 * whatever is lettered, so that the same plan gives the same bytes on every machine.
 *
 * @param book package whose {@code Messages} are spoken
 */
public record Words(String book, Language language, LengthUnit unit) {
  public Words {
    Objects.requireNonNull(book);
    Objects.requireNonNull(language);
    Objects.requireNonNull(unit);
  }

  /** What the sheets say of a plan. */
  public static Words of(Plan plan) {
    return new Words("sheets", plan.language(), plan.unit());
  }

  /** The same of another package. */
  public Words from(String book) {
    return new Words(book, language, unit);
  }

  /**
   * A text with its places {@code {0}}, {@code {1}}… filled in; figures keep to one line.
   *
   * @throws java.util.MissingResourceException if there is no such text, which is a bug
   */
  public String text(String key, Object... parts) {
    return Spacing.kept(Phrasebook.of(book, language).text(key, parts));
  }

  /** One of two texts, {@code key.one} or {@code key}, with the number in its first place. */
  public String counted(String key, long number, Object... more) {
    Object[] parts = new Object[more.length + 1];
    parts[0] = number;
    System.arraycopy(more, 0, parts, 1, more.length);
    return text(number == 1 ? key + ".one" : key, parts);
  }

  /** A choice by its name: {@code truss.gable_end}. */
  public String choice(String of, Enum<?> choice) {
    return text(of + "." + choice.name().toLowerCase(Locale.ROOT));
  }

  public String say(Worded worded) {
    return worded.in(language);
  }

  /** A part by its name, and whether it stands already. */
  String part(Part part) {
    String name = RoofNames.part(part);
    return part.existing() ? text("part.existing", name) : name;
  }

  /** What pieces of sheathing cut alike are called. */
  public String cut(String letter) {
    return letter.equals(Piece.WHOLE) ? text("cut.whole") : letter;
  }

  /** What a layer shows. */
  String layer(Layer layer) {
    return text("layer." + layer.name());
  }

  public String length(double length) {
    return LengthText.of(length, unit);
  }

  /** As {@link LengthText#small}. */
  public String small(double length, Rounding rounding) {
    return LengthText.small(length, unit, rounding);
  }

  public String angle(double degrees) {
    return FigureText.angle(degrees, language);
  }

  public String area(double area) {
    return FigureText.area(area, unit, language);
  }

  /** Whole pounds or kilograms. */
  public String weight(double weight) {
    String key = unit == LengthUnit.INCH ? "truss.pounds" : "truss.kilograms";
    return from("sheets").text(key, decimal(weight, 0));
  }

  /** Whole pounds, or kilonewtons to a hundredth. */
  public String force(double force) {
    return burden("force", force, 0);
  }

  /** Whole pounds to the foot, or kilonewtons to the metre. */
  public String lineLoad(double load) {
    return burden("lineLoad", load, 0);
  }

  /** Pounds to the square foot, or kilonewtons to the square metre. */
  public String areaLoad(double load) {
    return burden("areaLoad", load, 1);
  }

  private String burden(String key, double load, int decimals) {
    boolean metric = unit == LengthUnit.MILLIMETRE;
    String figure = decimal(load, metric ? 2 : decimals);
    return from("sheets")
        .text(
            key + "." + unit.symbol(),
            figure.matches("-0([.,]0+)?") ? figure.substring(1) : figure);
  }

  public String slope(Slope slope) {
    return SlopeText.of(slope, language);
  }

  /** With a fixed number of decimals, behind the point or comma of the language. */
  public String decimal(double number, int decimals) {
    return figure(String.format(Locale.ROOT, "%." + decimals + "f", number));
  }

  /** To a tenth. */
  public String percent(double percent) {
    return text("percent", decimal(percent, 1));
  }

  /** A plain decimal figure with the point or comma of the language. */
  String figure(String plain) {
    return switch (language) {
      case ENGLISH -> plain;
      case FRENCH -> plain.replace('.', ',');
    };
  }

  /** What the job is called on whatever is made of it. */
  public String title(Plan plan) {
    return plan.title().isBlank() ? text("untitled") : plan.title();
  }
}
