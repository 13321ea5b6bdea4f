package longpoint.planfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetPlanTest {
  @TempDir private Path folder;

  private static String sheet(String metadata) {
    return """
    <?xml version="1.0" encoding="UTF-8"?>
    <svg xmlns="http://www.w3.org/2000/svg" width="9mm" height="9mm" viewBox="0 0 9 9">
    <title>Sheet</title>
    <metadata>%s</metadata>
    <rect width="9" height="9"/>
    </svg>
    """
        .formatted(metadata);
  }

  private static Opened open(String svg) throws PlanFileException {
    return PlanFile.read(svg.getBytes(StandardCharsets.UTF_8));
  }

  private static PlanFileException refused(String svg) {
    PlanFileException e = catchThrowableOfType(PlanFileException.class, () -> open(svg));
    assertThat(e).isNotNull();
    return e;
  }

  @Test
  void everyPlanComesBackWhole() throws Exception {
    for (int seed = 1; seed <= 200; seed++) {
      Plan plan = RandomPlans.plan(new Random(seed));
      Opened opened = open(sheet(SheetPlan.element(plan)));
      assertThat(opened.plan()).as("seed %d", seed).isEqualTo(plan);
      assertThat(opened.source()).isEqualTo(Opened.Source.SHEET);
    }
  }

  @Test
  void signsThatXmlCannotHoldSurvive() throws Exception {
    Plan plan =
        Plan.empty(LengthUnit.INCH)
            .withTitle("]]> <b> & \"q\" \u0000\u0007\u0085 \uFFFE \uD83C\uDFE0 \uD800 été \\");
    assertThat(open(sheet(SheetPlan.element(plan))).plan()).isEqualTo(plan);
  }

  @Test
  void otherEncodingsOfTheSameSheetOpen() throws Exception {
    Plan plan = Plan.empty(LengthUnit.MILLIMETRE).withTitle("Gîte");
    for (String charset : new String[] {"UTF-16", "ISO-8859-1"}) {
      String svg =
          sheet(SheetPlan.element(plan))
              .replace("encoding=\"UTF-8\"", "encoding=\"" + charset + "\"");
      assertThat(PlanFile.read(svg.getBytes(Charset.forName(charset))).plan()).isEqualTo(plan);
    }
  }

  @Test
  void aSheetCutShortBehindThePlanOpens() throws Exception {
    Plan plan = Plan.empty(LengthUnit.INCH).withTitle("Short");
    String svg = sheet(SheetPlan.element(plan));
    assertThat(open(svg.substring(0, svg.indexOf("<rect"))).plan()).isEqualTo(plan);
    assertThat(refused(svg.substring(0, svg.indexOf("\"parts\""))))
        .hasMessageContaining("well-formed XML");
  }

  @Test
  void aDocumentTypeIsRefusedAndNothingOutsideIsRead() throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
    String entity = "<!DOCTYPE svg [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]>";
    String svg =
        sheet("<plan xmlns=\"urn:longpoint:plan\">&x;</plan>").replace("<svg ", entity + "<svg ");
    PlanFileException e = refused(svg);
    assertThat(e).hasMessageContaining("document type").hasMessageNotContaining("secret");
    assertThat(e.line()).isEqualTo(2);
  }

  @Test
  void whatIsNoSheetIsRefusedInWords() {
    assertThat(refused(sheet("")))
        .hasMessageContaining("carries no plan")
        .hasMessageContaining("ask for the plan file");
    assertThat(refused("  0\nSECTION\n  2\nHEADER\n")).hasMessageContaining("trace it");
    assertThat(refused("<html><body/></html>")).hasMessageContaining("neither a plan nor an SVG");
    assertThat(refused(sheet("<plan xmlns=\"urn:longpoint:plan\">{}</plan>")))
        .hasMessageStartingWith("In the plan this sheet carries: ");
    assertThat(refused("<svg xmlns=\"http://www.w3.org/2000/svg\"><a></svg>"))
        .hasMessageContaining("well-formed XML")
        .hasMessageContaining("line 1");
  }
}
