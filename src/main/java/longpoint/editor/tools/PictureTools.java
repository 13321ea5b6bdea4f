package longpoint.editor.tools;

import java.util.Locale;
import java.util.Optional;
import longpoint.editor.Messages;
import longpoint.editor.Pointer;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Step;
import longpoint.editor.Tool;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;
import longpoint.plan.Backdrop;

/**
 * Tools that fit the picture behind the plan, each by two points. Points on the picture are taken
 * as pointed at: nothing holds the pointer, since the picture's own lines are what counts.
 */
public enum PictureTools implements Tool, Opening {
  /** Two points, and the true length between them. */
  SCALE {
    @Override
    Step end(Point first, Snap second, Scene scene) {
      return Step.to(new PictureLength(first, second.at()));
    }
  },
  /** Two points on a line that runs level or upright. */
  STRAIGHTEN {
    @Override
    Step end(Point first, Snap second, Scene scene) {
      double lies = Compass.degrees(first, second.at());
      double by = Math.rint(lies / 90) * 90 - lies;
      return PictureTools.commit(scene, b -> b.turned(first, by));
    }
  },
  /** A point of the picture, and where on the plan it belongs. */
  PLACE {
    @Override
    Step end(Point first, Snap second, Scene scene) {
      return PictureTools.commit(scene, b -> b.moved(second.at().minus(first)));
    }
  };

  /** What becomes of two different points. */
  abstract Step end(Point first, Snap second, Scene scene);

  /** Changes the picture and goes back to picking things. */
  static Step commit(Scene scene, java.util.function.UnaryOperator<Backdrop> edit) {
    Optional<Backdrop> changed = scene.plan().markup().backdrop().map(edit);
    return Step.commit(
        new Selecting(),
        Messages.text("do.backdrop.change"),
        scene.plan().withMarkup(scene.plan().markup().withBackdrop(changed)));
  }

  @Override
  public Step begin(Snap here, Pointer pointer, FirstPoint waiting, Scene scene) {
    return scene.plan().markup().backdrop().isEmpty()
        ? Step.refuse(waiting, Messages.text("picture.none"))
        : Step.to(new PictureLine(this, here.at(), here));
  }

  @Override
  public Snap hold(Pointer pointer, Scene scene) {
    return Snap.free(pointer.at());
  }

  @Override
  public String invites(Scene scene) {
    return Messages.text(key() + ".first");
  }

  String asks() {
    return Messages.text(key() + ".second");
  }

  @Override
  public ToolState start() {
    return new FirstPoint(this);
  }

  @Override
  public String label() {
    return Messages.text(key() + ".label");
  }

  @Override
  public String hint() {
    return Messages.text(key() + ".hint");
  }

  private String key() {
    return "picture." + name().toLowerCase(Locale.ROOT);
  }
}
