package longpoint.picture;

import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadProgressListener;

/** Ends the unpacking of a picture when its thread has been interrupted. */
final class ReadingWatch implements IIOReadProgressListener {
  @Override
  public void imageProgress(ImageReader source, float percentageDone) {
    if (Thread.currentThread().isInterrupted()) {
      source.abort();
    }
  }

  @Override
  public void sequenceStarted(ImageReader source, int minIndex) {}

  @Override
  public void sequenceComplete(ImageReader source) {}

  @Override
  public void imageStarted(ImageReader source, int imageIndex) {}

  @Override
  public void imageComplete(ImageReader source) {}

  @Override
  public void thumbnailStarted(ImageReader source, int imageIndex, int thumbnailIndex) {}

  @Override
  public void thumbnailProgress(ImageReader source, float percentageDone) {}

  @Override
  public void thumbnailComplete(ImageReader source) {}

  @Override
  public void readAborted(ImageReader source) {}
}
