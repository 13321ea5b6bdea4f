package longpoint.desktop.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import longpoint.packet.Output;
import longpoint.packet.Request;
import longpoint.sheets.Paper;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;

class PacketFormTest {
  private static void click(PacketForm form, String... names) {
    for (String name : names) {
      Stream.of(form.getComponents())
          .filter(c -> name.equals(c.getName()))
          .map(JCheckBox.class::cast)
          .findFirst()
          .orElseThrow()
          .doClick();
    }
  }

  @Test
  void everythingIsOfferedAndComesBackUnchanged() {
    Request all = Request.everything(LengthUnit.INCH);
    assertThat(new PacketForm(all).request()).isEqualTo(all);
    Request some =
        new Request(Paper.A4, EnumSet.of(Output.PDF, Output.DXF), Set.of(Request.Bundle.MAIL));
    assertThat(new PacketForm(some).request()).isEqualTo(some);
  }

  @Test
  void boxesAndPaperAreWhatIsAsked() {
    PacketForm form = new PacketForm(Request.everything(LengthUnit.MILLIMETRE));
    click(form, "packet.sheets", "packet.house", "packet.data", "packet.lists", "packet.zip");
    ((JComboBox<?>)
            Stream.of(form.getComponents())
                .filter(c -> "packet.paper".equals(c.getName()))
                .findFirst()
                .orElseThrow())
        .setSelectedItem(Paper.LETTER);
    assertThat(form.request())
        .isEqualTo(
            new Request(
                Paper.LETTER,
                EnumSet.of(Output.PDF, Output.HTML, Output.DXF),
                Set.of(Request.Bundle.ZIP)));
  }

  @Test
  void aPacketOfNothingIsTheSheetsToPrint() {
    PacketForm form = new PacketForm(new Request(Paper.A3, EnumSet.of(Output.HTML), Set.of()));
    click(form, "packet.phone");
    assertThat(form.request().outputs()).containsExactly(Output.PDF);
  }
}
