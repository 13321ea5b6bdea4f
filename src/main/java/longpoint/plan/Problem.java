package longpoint.plan;

import java.util.Objects;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.wording.Language;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/**
 * Something about the user's plan, said in words for the user, in any language the program ships.
 *
 * @param level how bad it is
 * @param where id of the part or side it is about ({@link Side#id()}), or "plan"
 * @param wrong what is wrong, naming the place as people name it
 * @param mend what would put it right; may be {@link Worded#none()}
 */
public record Problem(Level level, String where, Worded wrong, Worded mend) {
  /** How much a problem matters. */
  public enum Level {
    /** Part of the roof could not be worked out. */
    ERROR,
    /** Worked out, but look at it before building. */
    WARNING,
    /** Worth knowing. */
    NOTE
  }

  /** What the key of a phrase's cure ends in. */
  private static final String CURE = ".cure";

  public Problem {
    Objects.requireNonNull(level);
    Objects.requireNonNull(where);
    Objects.requireNonNull(wrong);
    Objects.requireNonNull(mend);
  }

  /** In English only. */
  public Problem(Level level, String where, String message, String cure) {
    this(level, where, Worded.plain(message), Worded.plain(cure));
  }

  /** A problem whose cure stands beside its words, under the same key and {@code .cure}. */
  public static Problem of(Level level, String where, Phrase wrong) {
    return new Problem(level, where, wrong, wrong.under(wrong.key() + CURE));
  }

  /** As {@link #of}, where part of the roof could not be worked out. */
  public static Problem error(String where, Phrase wrong) {
    return of(Level.ERROR, where, wrong);
  }

  /** As {@link #of}, where someone should look before building. */
  public static Problem warning(String where, Phrase wrong) {
    return of(Level.WARNING, where, wrong);
  }

  /** Worth knowing, and nothing to be done about it. */
  public static Problem note(String where, Phrase message) {
    return new Problem(Level.NOTE, where, message, Worded.none());
  }

  /** In English only. */
  public static Problem error(String where, String message, String cure) {
    return new Problem(Level.ERROR, where, Worded.plain(message), Worded.plain(cure));
  }

  /** In English only. */
  public static Problem warning(String where, String message, String cure) {
    return new Problem(Level.WARNING, where, Worded.plain(message), Worded.plain(cure));
  }

  /** In English only. */
  public static Problem note(String where, String message) {
    return new Problem(Level.NOTE, where, Worded.plain(message), Worded.none());
  }

  /** The very place on the plan that it is about, where it names one. */
  public Optional<Point> at() {
    return PlacePoint.named(wrong).stream().findFirst();
  }

  /** What is wrong, a sentence. */
  public String message(Language language) {
    return wrong.sentence(language);
  }

  /** What is wrong, a sentence in English. */
  public String message() {
    return message(Language.ENGLISH);
  }

  /** What would put it right, a sentence; may be empty. */
  public String cure(Language language) {
    return mend.sentence(language);
  }

  /** What would put it right, a sentence in English; may be empty. */
  public String cure() {
    return cure(Language.ENGLISH);
  }

  /** With every part and wall called what its user calls it. */
  public Problem in(Plan plan) {
    return new Problem(level, where, named(wrong, plan), named(mend, plan));
  }

  @Override
  public String toString() {
    return level + " " + where + ": " + message() + " " + cure();
  }

  private static Worded named(Worded words, Plan plan) {
    if (words instanceof Phrase phrase) {
      return phrase.with(p -> named(p, plan));
    }
    if (words instanceof PlacePoint place) {
      return place.in(plan);
    }
    return words instanceof PlaceName place ? place.in(plan) : words;
  }
}
