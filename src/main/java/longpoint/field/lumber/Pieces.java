package longpoint.field.lumber;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Gathers pieces, joints rows longer than a board, and puts like pieces together. */
final class Pieces {
  private final double mark;
  private final double longest;
  private final Map<Key, Alike> alike = new LinkedHashMap<>();

  /** What pieces must share to be cut alike: lengths to the finest mark of a tape. */
  private record Key(
      String mark,
      Use use,
      Section section,
      long length,
      long board,
      EndCut from,
      EndCut to,
      Cut.Splice spliced) {}

  private static final class Alike {
    final Piece first;
    final Set<String> at = new LinkedHashSet<>();
    int count;

    Alike(Piece first) {
      this.first = first;
    }
  }

  /**
   * @param mark finest division of a tape; pieces that differ by less are cut alike
   * @param longest board sold
   */
  Pieces(double mark, double longest) {
    this.mark = mark;
    this.longest = longest;
  }

  /** Pieces that stay whole. */
  void add(Piece piece, int count) {
    put(piece, count, fits(piece) ? Cut.Splice.WHOLE : Cut.Splice.TOO_LONG);
  }

  /**
   * A row of boards from end to end.
   *
   * @param carriers places along it where boards may be jointed
   */
  void addRow(Piece row, List<Double> carriers) {
    if (fits(row)) {
      put(row, 1, Cut.Splice.WHOLE);
      return;
    }
    EndCut joint = EndCut.onFace(row.from().face());
    List<Double> lengths = Splices.of(row.length(), carriers, longest - row.slant());
    for (int i = 0; i < lengths.size(); i++) {
      EndCut first = i == 0 ? row.from() : joint;
      EndCut last = i == lengths.size() - 1 ? row.to() : joint;
      put(row.part(lengths.get(i), first, last), 1, Cut.Splice.SPLICED);
    }
  }

  private boolean fits(Piece piece) {
    return piece.board() <= longest + mark / 2;
  }

  private void put(Piece piece, int count, Cut.Splice spliced) {
    if (count < 1 || piece.length() < mark) {
      return;
    }
    Piece p = piece.ordered();
    Key key =
        new Key(
            p.mark(),
            p.use(),
            p.section(),
            Math.round(p.length() / mark),
            Math.round(p.board() / mark),
            p.from().rounded(),
            p.to().rounded(),
            spliced);
    Alike group = alike.computeIfAbsent(key, k -> new Alike(p));
    group.count += count;
    group.at.add(p.at());
  }

  /** By use, then the longest first; numbered so. */
  List<Cut> cuts() {
    List<Map.Entry<Key, Alike>> all = new ArrayList<>(alike.entrySet());
    all.sort(
        Comparator.<Map.Entry<Key, Alike>, Use>comparing(e -> e.getKey().use())
            .thenComparing(e -> -e.getKey().length()));
    Map<Use, Integer> numbers = new EnumMap<>(Use.class);
    Map<String, Integer> sharing = new HashMap<>();
    all.forEach(e -> sharing.merge(e.getKey().mark(), 1, Integer::sum));
    Map<String, Integer> letters = new HashMap<>();
    List<Cut> cuts = new ArrayList<>();
    for (Map.Entry<Key, Alike> e : all) {
      Piece p = e.getValue().first;
      String own = p.mark();
      if (own.isEmpty()) {
        own = p.use().letter() + numbers.merge(p.use(), 1, Integer::sum);
      } else if (sharing.get(own) > 1) {
        own += "." + letters.merge(own, 1, Integer::sum);
      }
      cuts.add(
          new Cut(
              own,
              p.use(),
              p.section(),
              e.getValue().count,
              p.length(),
              p.board(),
              p.from(),
              p.to(),
              e.getKey().spliced(),
              List.copyOf(e.getValue().at)));
    }
    return List.copyOf(cuts);
  }
}
