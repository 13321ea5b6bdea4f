package longpoint.picture;

import java.io.IOException;
import java.util.List;
import longpoint.stop.CalledOff;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;

/** Paints pages as the library does, but asks before every stroke whether it is still wanted. */
final class PageRenderer extends PDFRenderer {
  PageRenderer(PDDocument document) {
    super(document);
  }

  @Override
  protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
    return new Drawer(parameters);
  }

  private static final class Drawer extends PageDrawer {
    Drawer(PageDrawerParameters parameters) throws IOException {
      super(parameters);
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
      CalledOff.check();
      super.processOperator(operator, operands);
    }
  }
}
