package longpoint.desktop.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import longpoint.plan.AsBuilt;
import longpoint.plan.AsBuilt.PlateReading;
import longpoint.plan.AsBuilt.Tape;
import longpoint.plan.AsBuilt.Use;
import longpoint.plan.CornerNumber;
import longpoint.plan.Extras;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension.Corner;
import longpoint.units.EntryException;
import longpoint.units.LengthEntry;
import longpoint.units.LengthEntry.Allowed;
import longpoint.units.LengthList;
import longpoint.units.LengthText;
import longpoint.wording.Phrase;

/**
 * Readings of a plan as lists to type in: {@code 1-3 = 19' 3 1/4; 2-4 = 19'-3"}, corners by the
 * numbers of the wall sheet; in brackets what is set aside.
 */
record ReadingLists(Plan plan) {
  private static final Pattern TAPE =
      Pattern.compile("(\\()?\\s*(\\d{1,5})\\s*[-–]\\s*(\\d{1,5})\\s*=\\s*(.+?)");

  private static final Pattern PLATE = Pattern.compile("(\\()?\\s*(\\d{1,5})\\s*=\\s*(.+?)");

  private AsBuilt now() {
    return plan.onSite().walls();
  }

  String tapes() {
    return now().tapes().stream()
        .map(
            t -> aside(t.use(), number(t.from()) + "-" + number(t.to()) + " = " + exact(t.reads())))
        .collect(Collectors.joining("; "));
  }

  String plates() {
    return now().plates().stream()
        .map(p -> aside(p.use(), number(p.at()) + " = " + exact(p.reads())))
        .collect(Collectors.joining("; "));
  }

  private static String aside(Use use, String words) {
    return use == Use.ASIDE ? "(" + words + ")" : words;
  }

  private String number(Corner corner) {
    return CornerNumber.of(plan, corner).map(String::valueOf).orElse("0");
  }

  private String exact(double length) {
    return LengthText.exact(length, plan.unit());
  }

  List<Tape> readTapes(String typed) throws EntryException {
    List<Tape> before = new ArrayList<>(now().tapes());
    List<Tape> tapes = new ArrayList<>();
    for (LengthList.Part part : LengthList.parts(typed)) {
      Matcher m = matching(part, TAPE, "list.tape");
      Corner from = corner(part, m.group(2));
      Corner to = corner(part, m.group(3));
      if (from.equals(to)) {
        throw part.wrong(Phrase.of("units.list.tape"));
      }
      double reads = length(part, m, 4, Allowed.POSITIVE);
      Extras extras = Extras.NONE;
      for (Tape old : List.copyOf(before)) {
        if (old.between(from, to)) {
          before.remove(old);
          extras = old.extras();
          break;
        }
      }
      tapes.add(new Tape(from, to, reads, use(m), extras));
    }
    return tapes;
  }

  List<PlateReading> readPlates(String typed) throws EntryException {
    List<PlateReading> before = new ArrayList<>(now().plates());
    List<PlateReading> plates = new ArrayList<>();
    for (LengthList.Part part : LengthList.parts(typed)) {
      Matcher m = matching(part, PLATE, "list.plate");
      Corner at = corner(part, m.group(2));
      double reads = length(part, m, 3, Allowed.ANY);
      Extras extras = Extras.NONE;
      for (PlateReading old : List.copyOf(before)) {
        if (old.at().equals(at)) {
          before.remove(old);
          extras = old.extras();
          break;
        }
      }
      plates.add(new PlateReading(at, reads, use(m), extras));
    }
    return plates;
  }

  private static Use use(Matcher m) {
    return m.group(1) == null ? Use.COUNTS : Use.ASIDE;
  }

  private Corner corner(LengthList.Part part, String number) throws EntryException {
    return CornerNumber.at(plan, Integer.parseInt(number))
        .orElseThrow(() -> part.wrong(Phrase.of("units.list.corner", number)));
  }

  private static Matcher matching(LengthList.Part part, Pattern pattern, String wrong)
      throws EntryException {
    String text = part.text();
    // The bracket that closes belongs to the one that opens, not to a sum.
    String bare =
        text.startsWith("(") && text.endsWith(")") ? text.substring(0, text.length() - 1) : text;
    Matcher m = pattern.matcher(bare);
    if (!m.matches() || text.startsWith("(") != text.endsWith(")") && text.startsWith("(")) {
      throw part.wrong(Phrase.of("units." + wrong));
    }
    return m;
  }

  private double length(LengthList.Part part, Matcher m, int group, Allowed allowed)
      throws EntryException {
    return part.sub(m.start(group), m.end(group))
        .read(t -> LengthEntry.read(t, plan.unit(), allowed));
  }
}
