package longpoint.desktop.view;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import longpoint.desktop.Job;
import longpoint.desktop.Picks;
import longpoint.desktop.Settings;
import longpoint.desktop.action.Catalogue;
import longpoint.desktop.action.Task;

/** Makes the views, each with its buttons from the catalogue. */
public final class Views {
  private Views() {}

  /**
   * @param letters does what a letter stands for elsewhere in the window
   */
  public static BesideView of(
      Showing one,
      Job job,
      Picks picks,
      Settings settings,
      Predicate<Character> letters,
      Catalogue catalogue) {
    List<Task> steps = tasks(catalogue, "beside.before", "beside.after");
    return switch (one) {
      case HOUSE ->
          new HouseView(
              job,
              picks,
              settings,
              letters,
              Stream.concat(
                      stem(catalogue, "solid.show.").stream(),
                      Stream.of(catalogue.task("solid.parts")))
                  .toList(),
              stem(catalogue, "solid.from."));
      case OUTLINE -> new DrawingPane(one, new TrussOutlines(), job, picks, letters, steps);
      case FLAT -> new DrawingPane(one, new FlatPlanes(), job, picks, letters, steps);
      case SHEETS ->
          new SheetsView(
              job,
              picks,
              settings,
              letters,
              tasks(
                  catalogue,
                  "beside.before",
                  "beside.after",
                  "sheets.whole",
                  "sheets.width",
                  "sheets.size",
                  "sheets.nearer",
                  "sheets.farther"),
              tasks(catalogue, "beside.copy", "file.sheet", "file.print"));
      case LISTS -> new ListsView(job, picks, steps, catalogue.task("beside.copy"));
    };
  }

  private static List<Task> tasks(Catalogue catalogue, String... ids) {
    return Stream.of(ids).map(catalogue::task).toList();
  }

  private static List<Task> stem(Catalogue catalogue, String stem) {
    return catalogue.all().stream().filter(t -> t.id().startsWith(stem)).toList();
  }
}
