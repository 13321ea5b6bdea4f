package longpoint.desktop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import longpoint.desktop.canvas.BadgeGestures;
import longpoint.desktop.canvas.Gestures;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.desktop.canvas.ProblemBadges;
import longpoint.desktop.canvas.ProblemBadges.Badge;
import longpoint.desktop.panel.CurePopup;
import longpoint.desktop.panel.Html;
import longpoint.desktop.panel.ProblemsPanel;
import longpoint.drawing.Strokes;
import longpoint.editor.Cures;
import longpoint.editor.tools.Tools;
import longpoint.plan.Plan;
import longpoint.plan.Problem;

/** Problems on the sheet: their signs, what they say, and what a click cures. */
final class ProblemPlaces implements ProblemsPanel.Places {
  private static final int TIP_WIDTH = 300;

  private final Job job;
  private final PlanCanvas canvas;
  private final Sight sight;
  private final ProblemBadges badges = new ProblemBadges();
  private Optional<Badge> last = Optional.empty();

  ProblemPlaces(Job job, PlanCanvas canvas, Sight sight) {
    this.sight = sight;
    this.job = job;
    this.canvas = canvas;
    canvas.setTips(at -> badges.under(canvas.view(), at.x, at.y).map(ProblemPlaces::tip));
  }

  ProblemBadges badges() {
    return badges;
  }

  @Override
  public void listed(List<Problem> problems) {
    badges.show(job.picture().design().plan(), problems, around(problems));
    canvas.repaint();
  }

  private ProblemBadges.Around around(List<Problem> problems) {
    if (problems.isEmpty()) {
      return ProblemBadges.Around.NOTHING;
    }
    Picture picture = job.picture();
    return new ProblemBadges.Around(
        Strokes.of(picture.drawing().marks(), picture.unitsPerMm()).labels().stream()
            .map(Strokes.Label::box)
            .toList(),
        picture.unitsPerMm() / canvas.pixelsPerMm());
  }

  /** Lets signs take their clicks before whoever draws. */
  Gestures before(Gestures rest) {
    return new BadgeGestures(rest, badges, this::free, this::open);
  }

  /** Whether a click on a sign is for the sign: nothing is being drawn or dragged. */
  private boolean free() {
    return job.runner().tool() == Tools.SELECT && !job.runner().previewing();
  }

  private static String tip(Badge badge) {
    String words =
        badge.problems().stream()
            .map(p -> p.message(Texts.language()))
            .collect(Collectors.joining(" "));
    return Html.wrapped(words + " " + Texts.of("problem.click"), TIP_WIDTH);
  }

  /** Says what is wrong at a sign, with the cures that can be carried out. */
  void open(Badge badge) {
    last = Optional.of(badge);
    Plan plan = job.document().plan();
    CurePopup.open(
        canvas,
        badges.place(badge, canvas.view()),
        badge.problems(),
        Cures.at(plan, badge.where(), badge.problems()),
        job.runner()::apply);
  }

  /** Goes to the place of the next problem, the worst first, and round again. */
  void next() {
    List<Badge> all = badges.all();
    if (all.isEmpty()) {
      return;
    }
    int now = 0;
    while (now < all.size() && !isLast(all.get(now))) {
      now++;
    }
    Badge next = all.get(now + 1 < all.size() ? now + 1 : 0);
    next.at().filter(p -> !canvas.seen().contains(p)).ifPresent(canvas::centre);
    open(next);
  }

  private boolean isLast(Badge badge) {
    return last.filter(l -> l.where().equals(badge.where()) && l.at().equals(badge.at()))
        .isPresent();
  }

  @Override
  public void go(Problem problem) {
    sight.go(problem);
  }

  @Override
  public void cure(Problem problem) {
    badges.of(problem).ifPresent(this::open);
  }
}
