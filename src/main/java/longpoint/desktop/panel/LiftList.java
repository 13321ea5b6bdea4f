package longpoint.desktop.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import longpoint.desktop.Texts;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.plan.Extras;
import longpoint.plan.Lift;
import longpoint.units.EntryException;
import longpoint.units.LengthEntry;
import longpoint.units.LengthList;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/**
 * Sections of a run to be hoisted, as a list to type in: from place to place along the layout, and
 * what goes up with the trusses: {@code 0..8' + deck + ladders; 24'}.
 */
record LiftList(Run run, LengthUnit unit) {
  private static final Pattern ENTRY =
      Pattern.compile("(.+?)(?:\\.\\.(.+?))?((?:\\s*\\+\\s*\\p{L}+)*)");

  List<Lift> read(String typed) throws EntryException {
    List<Lift> lifts = new ArrayList<>();
    for (LengthList.Part part : LengthList.parts(typed)) {
      Matcher m = ENTRY.matcher(part.text());
      if (!m.matches()) {
        throw part.wrong(Phrase.of("units.list.lift"));
      }
      Point from = place(part, m, 1);
      Optional<Point> to = m.group(2) == null ? Optional.empty() : Optional.of(place(part, m, 2));
      lifts.add(
          new Lift(
              "",
              to.isPresent() ? List.of() : List.of(from),
              to.map(t -> new Lift.Stretch(from, t)),
              also(part, m.group(3)),
              Lift.Rigging.CHOSEN,
              Extras.NONE));
    }
    return lifts;
  }

  private Point place(LengthList.Part part, Matcher m, int group) throws EntryException {
    double u =
        part.sub(m.start(group), m.end(group))
            .read(t -> LengthEntry.read(t, unit, LengthEntry.Allowed.NOT_NEGATIVE));
    return run.axes().at(u, run.width() / 2);
  }

  private static List<Lift.Also> also(LengthList.Part part, String words) throws EntryException {
    List<Lift.Also> also = new ArrayList<>();
    for (String word : words.split("\\+")) {
      String said = word.strip().toLowerCase(Locale.ROOT);
      if (!said.isEmpty()) {
        also.add(one(part, said));
      }
    }
    return also.stream().distinct().sorted().toList();
  }

  private static Lift.Also one(LengthList.Part part, String said) throws EntryException {
    for (Lift.Also also : Lift.Also.values()) {
      if (said.equals(also.key()) || said.equals(word(also).toLowerCase(Locale.ROOT))) {
        return also;
      }
    }
    throw part.wrong(Phrase.of("units.list.lift"));
  }

  private static String word(Lift.Also also) {
    return Texts.of("lift.also." + also.key());
  }

  String text(List<Lift> lifts) {
    return lifts.stream().map(this::text).collect(Collectors.joining("; "));
  }

  /** Where it is, as it is typed; several places of one lift show the first alone. */
  String place(Lift lift) {
    return lift.stretch()
        .map(s -> station(s.from()) + ".." + station(s.to()))
        .orElseGet(() -> lift.trusses().stream().findFirst().map(this::station).orElse("0"));
  }

  private String text(Lift lift) {
    return place(lift)
        + lift.also().stream().map(a -> " + " + word(a)).collect(Collectors.joining());
  }

  private String station(Point place) {
    return LengthText.exact(run.axes().u(place), unit);
  }

  /** A typed one with the name, rigging and unknown keys of the one it was typed over. */
  Lift kept(Lift before, Lift typed) {
    boolean same = place(before).equals(place(typed));
    return new Lift(
        before.name(),
        same ? before.trusses() : typed.trusses(),
        same ? before.stretch() : typed.stretch(),
        typed.also(),
        before.rigging(),
        before.extras());
  }
}
