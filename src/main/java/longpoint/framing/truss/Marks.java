package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.framing.Shop;
import longpoint.framing.truss.Placed.Carrier;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.wording.Phrase;

/**
 * Shares marks among trusses: one mark for all that would come off one jig, turned end for end or
 * not; then says which truss hangs on which.
 *
 * @param marks in the order first met
 * @param trusses in the order given
 * @param girders every truss that carries others
 */
public record Marks(List<TrussMark> marks, List<Truss> trusses, List<Girder> girders) {
  /** Two trusses are one if no corner differs by more than this share of the finest mark. */
  private static final double SAME = 1.0 / 16;

  /** Common practice; printed with every girder. */
  private static final Phrase REMINDER = Phrase.of("framing.girder.hung");

  public Marks {
    marks = List.copyOf(marks);
    trusses = List.copyOf(trusses);
    girders = List.copyOf(girders);
  }

  public static Marks share(List<Placed> placed, Shop shop) {
    List<Group> groups = new ArrayList<>();
    List<Group> of = new ArrayList<>();
    for (Placed p : placed) {
      Group group = find(groups, p, shop.mark() * SAME);
      group.members++;
      of.add(group);
    }
    List<TrussMark> marks = groups.stream().map(g -> g.mark(shop)).toList();
    List<String> ids = ids(placed);
    List<Truss> trusses = new ArrayList<>();
    for (int i = 0; i < placed.size(); i++) {
      Placed p = placed.get(i);
      Group group = of.get(i);
      trusses.add(
          new Truss(
              ids.get(i),
              group.name,
              p.kind(),
              p.plies(),
              p.run().part().id(),
              p.run().id(),
              p.station(),
              p.profile().span(),
              p.profile().height(),
              group.members,
              p.from(),
              p.to(),
              p.plate(),
              p.profile().sameAs(group.profile, shop.mark() * SAME)
                  ? Truss.Turn.AS_DRAWN
                  : Truss.Turn.END_FOR_END,
              p.carriedFrom().flatMap(c -> carrying(c, placed, ids, shop)),
              p.carriedTo().flatMap(c -> carrying(c, placed, ids, shop))));
    }
    return new Marks(marks, trusses, girders(placed, trusses));
  }

  /** Trusses of one shape while they are being counted. */
  private static final class Group {
    final String name;
    final Placed first;
    final Profile profile;
    int members;

    Group(String name, Placed first) {
      this.name = name;
      this.first = first;
      this.profile = first.profile();
    }

    /** How far in from the run's low wall it starts: a cap's studs stand on those of its base. */
    private double fromWall() {
      return first.kind() == TrussKind.GABLE_CAP ? first.run().axes().v(first.from()) : 0;
    }

    TrussMark mark(Shop shop) {
      TrussShape shape =
          TrussShape.of(
              first.kind(), profile, first.run().part().frame().spacing(), fromWall(), shop);
      return TrussMark.of(
          name,
          first.kind(),
          first.plies(),
          members,
          profile,
          shape,
          first.plies() * shape.lumber() * shop.weight());
    }
  }

  private static Group find(List<Group> groups, Placed p, double within) {
    int ofKind = 0;
    for (Group g : groups) {
      if (g.first.kind() == p.kind()) {
        ofKind++;
        if (g.first.plies() == p.plies()
            && (g.profile.sameAs(p.profile(), within)
                || g.profile.sameAs(p.profile().turned(), within))) {
          return g;
        }
      }
    }
    Group group = new Group(p.kind().letter() + (ofKind + 1), p);
    groups.add(group);
    return group;
  }

  private static List<String> ids(List<Placed> placed) {
    Map<String, Integer> numbers = new HashMap<>();
    List<String> ids = new ArrayList<>(placed.size());
    for (Placed p : placed) {
      String stem = p.run().id() + ":" + p.kind().letter();
      ids.add(stem + numbers.merge(stem, 1, Integer::sum));
    }
    return ids;
  }

  private static Optional<String> carrying(
      Carrier carrier, List<Placed> placed, List<String> ids, Shop shop) {
    for (int i = 0; i < placed.size(); i++) {
      Placed p = placed.get(i);
      if ((p.kind().squareToRidge() || p.kind() == TrussKind.CROSS_GIRDER)
          && !p.kind().isCap()
          && p.run().id().equals(carrier.run())
          && new Segment(p.from(), p.to()).distance(carrier.place()) < shop.mark()) {
        return Optional.of(ids.get(i));
      }
    }
    return Optional.empty();
  }

  private static List<Girder> girders(List<Placed> placed, List<Truss> trusses) {
    Map<String, List<Girder.Hanger>> hangers = new HashMap<>();
    for (int i = 0; i < placed.size(); i++) {
      Truss t = trusses.get(i);
      hang(hangers, trusses, t, t.carriedFrom(), placed.get(i).carriedFrom());
      hang(hangers, trusses, t, t.carriedTo(), placed.get(i).carriedTo());
    }
    List<Girder> girders = new ArrayList<>();
    for (Truss t : trusses) {
      List<Girder.Hanger> here = hangers.getOrDefault(t.id(), List.of());
      if (!here.isEmpty()) {
        here.sort(Comparator.comparingDouble(Girder.Hanger::along));
        girders.add(new Girder(t.id(), t.mark(), here, REMINDER));
      }
    }
    return girders;
  }

  private static void hang(
      Map<String, List<Girder.Hanger>> hangers,
      List<Truss> trusses,
      Truss carried,
      Optional<String> by,
      Optional<Carrier> carrier) {
    for (Truss girder : trusses) {
      if (by.equals(Optional.of(girder.id())) && carrier.isPresent()) {
        Point place = carrier.get().place();
        double along = girder.from().distance(place);
        Point away = carried.from().toward(carried.to(), 0.5).minus(place);
        boolean left = girder.to().minus(girder.from()).cross(away) > 0;
        Girder.Face face = left ? Girder.Face.LEFT : Girder.Face.RIGHT;
        hangers
            .computeIfAbsent(girder.id(), id -> new ArrayList<>())
            .add(new Girder.Hanger(along, face, carried.id(), carried.mark()));
      }
    }
  }
}
