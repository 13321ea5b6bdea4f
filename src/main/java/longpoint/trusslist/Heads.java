package longpoint.trusslist;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Tells what the columns hold by the words over them, in English and French: trade words, not
 * anybody's file format. Units and slope notations in a head hold for the bare numbers beneath.
 */
final class Heads {
  /** What bare numbers under a head are. */
  enum Bare {
    AS_PLAN(""),
    MILLIMETRES("mm"),
    CENTIMETRES("cm"),
    METRES("m"),
    INCHES("in"),
    FEET("ft"),
    IN_TWELVE("/12"),
    DEGREES("deg"),
    PERCENT("%");

    private final String ending;

    Bare(String ending) {
      this.ending = ending;
    }

    /** What is written behind a bare number so that it reads as meant. */
    String ending() {
      return ending;
    }
  }

  private static final Map<Column, List<String>> WORDS = new EnumMap<>(Column.class);

  static {
    words(Column.MARK, "mark", "truss mark", "truss", "label", "id", "truss id", "name", "tag");
    words(Column.MARK, "repere", "marque", "ferme", "repere ferme", "nom", "designation");
    words(
        Column.QUANTITY,
        "quantity",
        "qty",
        "count",
        "pcs",
        "pieces",
        "number",
        "no of",
        "how many");
    words(Column.QUANTITY, "quantite", "qte", "nombre", "nb", "nbre");
    words(Column.SPAN, "span", "truss span", "overall span", "span out to out", "bearing span");
    words(Column.SPAN, "portee", "portee totale", "portee hors tout");
    words(Column.HEIGHT, "height", "overall height", "truss height", "total height", "peak height");
    words(Column.HEIGHT, "hauteur", "hauteur totale", "hauteur hors tout", "hauteur au faite");
    words(Column.SLOPE, "slope", "pitch", "top chord slope", "top chord pitch", "roof slope");
    words(Column.SLOPE, "roof pitch", "pente", "pente du toit", "inclinaison");
    words(Column.OVERHANG, "overhang", "tail", "oh", "o h", "eave overhang", "tail length");
    words(Column.OVERHANG, "debord", "debordement", "avant toit", "porte a faux", "queue");
    words(Column.HEEL, "heel", "heel height", "butt", "butt height", "heel ht");
    words(Column.HEEL, "talon", "hauteur talon", "hauteur de talon", "hauteur du talon");
    words(Column.PLIES, "ply", "plies", "no of plies", "number of plies", "plys");
    words(Column.PLIES, "pli", "plis", "epaisseurs", "nombre de plis");
  }

  private static void words(Column column, String... words) {
    List<String> all = new ArrayList<>(WORDS.getOrDefault(column, List.of()));
    all.addAll(Arrays.asList(words));
    WORDS.put(column, List.copyOf(all));
  }

  /** Words for one end of a truss, and for the other. */
  private static final List<String> ONE = List.of("left", "l", "lh", "gauche", "g", "1", "low");

  private static final List<String> OTHER =
      List.of("right", "r", "rh", "droit", "droite", "d", "2", "other", "autre", "high");

  private Heads() {}

  /**
   * A head that was understood.
   *
   * @param column what stands beneath
   * @param bare what bare numbers beneath are
   */
  record Head(Column column, Bare bare) {}

  static Optional<Head> read(String head) {
    Bare bare = bare(head);
    List<String> words = new ArrayList<>(Arrays.asList(plain(head).split(" ")));
    words.removeIf(w -> w.isEmpty());
    boolean other = words.removeIf(OTHER::contains);
    boolean one = words.removeIf(ONE::contains);
    String bareWords = String.join(" ", words);
    for (Map.Entry<Column, List<String>> entry : WORDS.entrySet()) {
      if (entry.getValue().contains(bareWords)) {
        Column column = entry.getKey();
        boolean ends = column.other().isPresent();
        if (!ends && (one || other)) {
          return Optional.empty();
        }
        return Optional.of(new Head(other ? column.other().orElseThrow() : column, bare));
      }
    }
    return Optional.empty();
  }

  /** Small letters without accents, units or signs. */
  private static String plain(String head) {
    String small =
        Normalizer.normalize(head, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT);
    return small
        .replaceAll("\\([^)]*\\)|\\[[^\\]]*\\]", " ")
        .replaceAll("/ ?12|in 12|sur 12|%|°", " ")
        .replaceAll("[^a-z0-9]+", " ")
        .replaceAll("\\b(mm|cm|ft|inches|deg|degrees|degres)\\b", " ")
        .strip();
  }

  static Bare bare(String head) {
    String small = head.toLowerCase(Locale.ROOT);
    if (small.matches(".*(/ ?12|in 12|sur 12).*")) {
      return Bare.IN_TWELVE;
    }
    if (small.contains("%")) {
      return Bare.PERCENT;
    }
    if (small.matches(".*(°|\\bdeg).*")) {
      return Bare.DEGREES;
    }
    if (small.matches(".*\\bmm\\b.*")) {
      return Bare.MILLIMETRES;
    }
    if (small.matches(".*\\bcm\\b.*")) {
      return Bare.CENTIMETRES;
    }
    if (small.matches(".*[(\\[]m[)\\]].*")) {
      return Bare.METRES;
    }
    if (small.matches(".*([(\\[](in|po|\")\\.?[)\\]]|\\binches\\b|\\bpouces\\b).*")) {
      return Bare.INCHES;
    }
    return small.matches(".*([(\\[](ft|pi|')\\.?[)\\]]|\\bfeet\\b|\\bpieds\\b).*")
        ? Bare.FEET
        : Bare.AS_PLAN;
  }
}
