package longpoint.framing.stick;

import java.util.List;
import java.util.Optional;
import longpoint.framing.truss.Truss;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/** Names the piece that each end of a rafter comes to. */
public final class HeldBy {
  private final List<Rafter> rafters;
  private final List<Truss> girders;

  private HeldBy(List<Rafter> rafters, List<Truss> girders) {
    this.rafters = rafters;
    this.girders = girders;
  }

  /** The rafters again, with the marks of what carries their ends. */
  public static List<Rafter> name(List<Rafter> rafters, List<Truss> trusses) {
    HeldBy names = new HeldBy(rafters, trusses);
    return rafters.stream()
        .map(
            r -> {
              Segment place = r.places().get(0);
              return r.heldBy(
                  names.at(place.from(), r.foot().on(), r), names.at(place.to(), r.head().on(), r));
            })
        .toList();
  }

  private Optional<String> at(Point end, Bearing on, Rafter own) {
    return switch (on) {
      case RIDGE, RIDGE_END -> rafter(end, RafterKind.RIDGE, own);
      case HIP -> rafter(end, RafterKind.HIP, own);
      case VALLEY -> rafter(end, RafterKind.VALLEY, own);
      case HEADER -> rafter(end, RafterKind.HEADER, own);
      case TRIMMER -> rafter(end, RafterKind.TRIMMER, own);
      case GIRDER -> girder(end, own);
      case WALL, LEDGER, DECK, POST, OPPOSITE, SET_BEFORE, MITRED, COMMONS, NOTHING ->
          Optional.empty();
    };
  }

  private Optional<String> rafter(Point end, RafterKind kind, Rafter own) {
    return rafters.stream()
        .filter(r -> r.kind() == kind && !r.mark().equals(own.mark()))
        .filter(r -> r.places().stream().anyMatch(p -> p.distance(end) < own.thickness()))
        .map(Rafter::mark)
        .findFirst();
  }

  private Optional<String> girder(Point end, Rafter own) {
    return girders.stream()
        .filter(t -> t.part().equals(own.part()))
        .filter(t -> new Segment(t.from(), t.to()).distance(end) <= own.thickness())
        .map(Truss::mark)
        .findFirst();
  }
}
