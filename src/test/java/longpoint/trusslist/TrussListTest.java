package longpoint.trusslist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import longpoint.plan.Problem;
import longpoint.plan.Supplied;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;

/** Lists as offices and spreadsheets write them (RFC 4180 and what is made of it). */
class TrussListTest {
  private static TrussList read(String text, LengthUnit unit) throws TrussListException {
    return TrussList.read(text.getBytes(StandardCharsets.UTF_8), "list.csv", unit, Map.of());
  }

  private static Supplied.Row row(TrussList list, int row) {
    return list.supplied().trusses().get(row);
  }

  @Test
  void everySeparatorAndEncodingReadsTheSame() throws TrussListException {
    String plain = "Mark;Qty;Span\nA1;3;28' 6 1/2\"\nÉ2;2;12'\n";
    TrussList semicolons = read(plain, LengthUnit.INCH);
    for (String separator : List.of(",", "\t", "|")) {
      assertThat(read(plain.replace(";", separator), LengthUnit.INCH).supplied())
          .isEqualTo(semicolons.supplied());
    }
    for (Charset charset : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
      byte[] marked = ("\uFEFF" + plain).getBytes(charset);
      assertThat(TrussList.read(marked, "list.csv", LengthUnit.INCH, Map.of()).supplied())
          .isEqualTo(semicolons.supplied());
    }
    byte[] windows = plain.replace("\n", "\r\n").getBytes(Charset.forName("windows-1252"));
    assertThat(TrussList.read(windows, "list.csv", LengthUnit.INCH, Map.of()).supplied())
        .isEqualTo(semicolons.supplied());
    assertThat(read("\uFEFF" + plain, LengthUnit.INCH).supplied()).isEqualTo(semicolons.supplied());
    assertThat(row(semicolons, 0).figures().span()).contains(342.5);
    assertThat(row(semicolons, 1).mark()).isEqualTo("É2");
    assertThat(row(semicolons, 1).line()).isEqualTo(3);
  }

  @Test
  void frenchHeadsDecimalCommasAndUnitsInHeads() throws TrussListException {
    TrussList list =
        read(
            "Repère;Qté;Portée (m);Pente (°);Débord gauche (mm);Débord droit (mm);Talon\n"
                + "F1;12;8,534;35;400;350;115,5\n",
            LengthUnit.MILLIMETRE);
    Supplied.Figures f = row(list, 0).figures();
    assertThat(f.span().orElseThrow()).isCloseTo(8534, within(1e-9));
    assertThat(f.slope().orElseThrow().ratio())
        .isCloseTo(Math.tan(Math.toRadians(35)), within(1e-12));
    assertThat(f.overhang()).contains(400.0);
    assertThat(f.otherOverhang()).contains(350.0);
    assertThat(f.heel()).contains(115.5);
    assertThat(list.notes()).isEmpty();
  }

  @Test
  void quotedCellsHoldSeparatorsQuotesAndLines() throws TrussListException {
    TrussList list =
        read(
            "\"Truss\",\"Qty\",\"Span\"\n\"A, \"\"big\"\"\n1\",2,\"28'-0\"\"\"\nB,1,9'\n",
            LengthUnit.INCH);
    assertThat(row(list, 0).mark()).isEqualTo("A, \"big\"\n1");
    assertThat(row(list, 0).figures().span()).contains(336.0);
    assertThat(row(list, 1).line()).isEqualTo(4);
  }

  /** Feet, inches and sixteenths, as trusses are often listed (common practice). */
  @Test
  void hyphensPartFeetInchesAndSixteenths() throws TrussListException {
    TrussList list = read("Truss,Qty,Span\nA,1,28-06-08\n", LengthUnit.INCH);
    assertThat(row(list, 0).figures().span()).contains(342.5);
  }

  @Test
  void whatCannotBeReadIsToldWithItsLineAndNothingIsDroppedSilently() throws TrussListException {
    TrussList list =
        read(
            "Offer 12 of spring\nTruss,Qty,Span,Pitch,Colour\nA,two,28',6/12,red\nB,3,wide,6/12,\n"
                + "C,,10',8,\nTotal,9,,,\n,,,9/12,\n",
            LengthUnit.INCH);
    List<String> said = list.notes().stream().map(Problem::message).toList();
    assertThat(said)
        .anyMatch(s -> s.contains("Lines 1 to 1 stand above"))
        .anyMatch(s -> s.contains("not compared: Colour"))
        .anyMatch(s -> s.startsWith("Line 3, quantity: \"two\""))
        .anyMatch(s -> s.startsWith("Line 4, span: \"wide\""))
        .anyMatch(s -> s.contains("Lines 5 say no quantity"))
        .anyMatch(s -> s.startsWith("Line 6, beginning \"Total\""))
        .anyMatch(s -> s.startsWith("Line 7, beginning \"9/12\""))
        .anyMatch(s -> s.contains("rise in 12"));
    assertThat(list.supplied().trusses()).extracting(Supplied.Row::mark).containsExactly("B", "C");
    assertThat(row(list, 0).figures().span()).isEmpty();
    assertThat(list.notes())
        .filteredOn(p -> p.level() == Problem.Level.WARNING)
        .allMatch(p -> !p.cure().isEmpty());
  }

  @Test
  void theUserMaySayWhichColumnHoldsWhat() throws TrussListException {
    TrussList list =
        TrussList.read(
            "T9 4 28'\n".replace(" ", ";").getBytes(StandardCharsets.UTF_8),
            "x",
            LengthUnit.INCH,
            Map.of(Column.MARK, 0, Column.QUANTITY, 1, Column.SPAN, 2));
    assertThat(row(list, 0).quantity()).isEqualTo(4);
    assertThat(row(list, 0).figures().span()).contains(336.0);
    assertThatThrownBy(() -> read("a;b\nc;d\n", LengthUnit.INCH))
        .isInstanceOf(TrussListException.class)
        .hasMessageContaining("Say which column");
    assertThatThrownBy(() -> read("Mark;Span\n\"open;3\n", LengthUnit.INCH))
        .hasMessageContaining("line 2");
  }
}
