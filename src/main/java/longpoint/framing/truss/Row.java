package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The trusses square to the ridge of one run, in order.
 *
 * @param standings rising
 */
public record Row(List<Standing> standings) {
  public Row {
    standings = standings.stream().sorted(Comparator.comparingDouble(Standing::station)).toList();
  }

  /** A row of single trusses or rafters. */
  public static Row of(List<Double> stations, double thickness) {
    return new Row(stations.stream().map(s -> Standing.ordinary(s, thickness)).toList());
  }

  public List<Double> stations() {
    return standings.stream().map(Standing::station).toList();
  }

  /** Where the tape is marked: the near face of each, the truss standing beyond the mark. */
  public List<Double> tapeMarks() {
    return standings.stream().map(Standing::near).toList();
  }

  /** Room that each takes on the plate. */
  public List<Double> widths() {
    return standings.stream().map(Standing::width).toList();
  }

  /** Clear distance from each to the next. */
  public List<Double> gaps() {
    List<Double> gaps = new ArrayList<>();
    for (int i = 0; i + 1 < standings.size(); i++) {
      gaps.add(standings.get(i + 1).near() - standings.get(i).far());
    }
    return List.copyOf(gaps);
  }

  Row without(double station) {
    return new Row(standings.stream().filter(s -> s.station() != station).toList());
  }
}
