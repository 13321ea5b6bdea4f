package longpoint.planfile;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longpoint.plan.Buying;
import longpoint.units.Decimal;
import longpoint.units.LengthUnit;

/** Writes what the user decides about what is bought; what is as usual is left out. */
final class BuyingWriter {
  private final List<String> fields = new ArrayList<>();

  private BuyingWriter() {}

  /** The plan's field, or none if everything is as usual. */
  static List<String> field(Buying buying, LengthUnit unit) {
    BuyingWriter writer = new BuyingWriter();
    writer.write(buying, Buying.of(unit));
    buying.extras().json().forEach((key, json) -> writer.fields.add(quoted(key, json)));
    return writer.fields.isEmpty()
        ? List.of()
        : List.of(
            quoted("buying", writer.fields.stream().collect(Collectors.joining(", ", "{ ", " }"))));
  }

  private void write(Buying b, Buying usual) {
    number("roofingWaste", b.roofingWaste(), usual.roofingWaste());
    number("bundlesPerSquare", b.bundlesPerSquare(), usual.bundlesPerSquare());
    number("underlayRoll", b.underlayRoll(), usual.underlayRoll());
    number("nailEdge", b.nails().edge(), usual.nails().edge());
    number("nailField", b.nails().field(), usual.nails().field());
    if (b.rating() != usual.rating()) {
      fields.add(quoted("rating", JsonText.quote(b.rating().stamp())));
    }
    if (b.vent() != usual.vent()) {
      fields.add(quoted("vent", JsonText.quote(b.vent().key())));
    }
    boards(b.boards(), usual.boards());
  }

  private void boards(Buying.Boards b, Buying.Boards usual) {
    number("kerf", b.kerf(), usual.kerf());
    if (!b.lengths().equals(usual.lengths())) {
      fields.add(
          quoted(
              "boardLengths",
              b.lengths().stream().map(Decimal::json).collect(Collectors.joining(", ", "[", "]"))));
    }
    number("blockingWidth", b.blocking(), usual.blocking());
    number("rafterWidth", b.rafter(), usual.rafter());
    number("hipWidth", b.hip(), usual.hip());
    number("ridgeWidth", b.ridge(), usual.ridge());
    number("fasciaWidth", b.fascia(), usual.fascia());
    number("rakeWidth", b.rake(), usual.rake());
    number("rakeThickness", b.rakeThickness(), usual.rakeThickness());
  }

  private void number(String key, double value, double usual) {
    if (value != usual) {
      fields.add(quoted(key, Decimal.json(value)));
    }
  }

  private static String quoted(String key, String json) {
    return JsonText.quote(key) + ": " + json;
  }
}
