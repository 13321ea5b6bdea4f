package longpoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Random;
import longpoint.wording.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthEntryTest {
  /**
   * Feet and inches by the foot of 12 in; metric by the international inch of exactly 25.4 mm
   * (international yard and pound agreement, 1959). 7315 mm / 25.4 = 287.99212598…
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "24'3-1/2            | 291.5",
        "24' 3 1/2\"         | 291.5",
        "24'-3 1/2\"         | 291.5",
        "24ft 3.5in          | 291.5",
        "24 ft. 3 1/2 in.    | 291.5",
        "24 feet 3 1/2 inches| 291.5",
        "24 pi 3 po ½        | error",
        "24 pi 3 ½ po        | 291.5",
        "24′ 3½″             | 291.5",
        "24’–3½”             | 291.5",
        "24'3''              | 291",
        "291.5               | 291.5",
        "291,5               | 291.5",
        "0,125               | 0.125",
        "3 1/2               | 3.5",
        "3-1/2               | 3.5",
        "3½                  | 3.5",
        "1/2                 | 0.5",
        ".5                  | 0.5",
        "24.5'               | 294",
        "24 1/2'             | 294",
        "5' 14\"             | 74",
        "-16                 | -16",
        "-2'-6               | -30",
        "−2′ 6″              | -30",
        "25.4mm              | 1",
        "2,54 cm             | 1",
        "0.0254m             | 1",
        "12' + 3 1/2         | 147.5",
        "(24' - 2*3 1/2)/2   | 140.5",
        "24' - 2*3 1/2       | 281",
        "24' - 16            | 272",
        "(24') - 3 1/2       | 284.5",
        "24'-3*2             | 582",
        "24' - 25.4mm        | 287",
        "2 × 3 ½             | 7",
        "48 ÷ 5              | 9.6",
        "12'/3               | 48",
        "1/2/2               | 0.25",
        "7/2.5               | 2.8",
        "1/3 + 1/3 + 1/3     | 1",
        "0.1 + 0.2           | 0.3",
        "24 - 3              | 21",
        "24-16               | 8",
        "291.5-3             | 288.5",
        "24 - 3 - 8          | 13",
        "-(3 + 4)            | -7",
        "3 - -4              | 7",
        "10 - 1/2            | 9.5",
      })
  void readsInchPlans(String typed, String inches) throws EntryException {
    if (inches.equals("error")) {
      assertThatThrownBy(() -> LengthEntry.read(typed, LengthUnit.INCH))
          .isInstanceOf(EntryException.class);
    } else {
      assertThat(LengthEntry.read(typed, LengthUnit.INCH)).isEqualTo(Double.parseDouble(inches));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "7315mm        | 7315",
        "7315          | 7315",
        "7.315 m       | 7315",
        "7,315 m       | 7315",
        "7,315 mm      | error",
        "731.5cm       | 7315",
        "731,5 cm      | 7315",
        "1\"           | 25.4",
        "24'3-1/2      | 7404.1",
        "12' + 90mm    | 3747.6",
        "3.6m - 2*38   | 3524",
        "12' + 3 1/2   | error",
      })
  void readsMillimetrePlans(String typed, String mm) throws EntryException {
    if (mm.equals("error")) {
      assertThatThrownBy(() -> LengthEntry.read(typed, LengthUnit.MILLIMETRE))
          .isInstanceOf(EntryException.class);
    } else {
      assertThat(LengthEntry.read(typed, LengthUnit.MILLIMETRE)).isEqualTo(Double.parseDouble(mm));
    }
  }

  /**
   * As written in French: decimal comma (SI brochure, 9th edition, 5.4.4, and ISO 80000-1, 7.3,
   * from memory); pi and po for pied and pouce (Office québécois de la langue française, from
   * memory). 1 pi = 304.8 mm and 1 po = 25.4 mm exactly.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12 pi 3 1/2 po        | 3746.5",
        "12 pi 3½ po           | 3746.5",
        "12pi 3po              | 3733.8",
        "12 pi. 3 po.          | 3733.8",
        "12 pieds 3 pouces     | 3733.8",
        "1 pied                | 304.8",
        "3,75 m                | 3750",
        "3,750 m               | 3750",
        "3,750m                | 3750",
        "3,750 mètres          | 3750",
        "375,5 cm              | 3755",
        "0,5 m + 12 cm         | 620",
        "(12 pi) - 3,5 po      | 3568.7",
        "3750,5 millimètres    | 3750.5",
      })
  void readsFrenchNotations(String typed, double mm) throws EntryException {
    assertThat(LengthEntry.read(typed, LengthUnit.MILLIMETRE)).isEqualTo(mm);
  }

  @Test
  void refusesInFrenchAsInEnglish() {
    EntryException e = refused("24 yd");
    assertThat(e.message(Language.FRENCH))
        .isEqualTo(
            "« yd » n’est pas une unité connue ici. Utilisez ' ou pi, \" ou po, mm, cm ou m.");
    assertThat(e.message(Language.ENGLISH)).isEqualTo(e.getMessage());
    assertThat(refused("24-3").message(Language.FRENCH))
        .startsWith("24-3 peut se lire de plusieurs façons. Pour des pieds et pouces")
        .endsWith(": 24 - 3.");
  }

  @Test
  void metricInAnInchPlanIsTheNearestDouble() throws EntryException {
    assertThat(LengthEntry.read("7315mm", LengthUnit.INCH)).isEqualTo(7315 / 25.4);
    assertThat(LengthEntry.read("7.315 m", LengthUnit.INCH)).isEqualTo(7315 / 25.4);
    assertThat(LengthEntry.read("731.5cm", LengthUnit.INCH)).isEqualTo(7315 / 25.4);
  }

  /** What could be two lengths is asked about, with the text it is about and both ways out. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "24-3-8        | 0 | write 24'3 8/16\"; to subtract put spaces round the minus, as in 24 - 3 - 8.",
        "24-3 1/2      | 0 | write 24' 3 1/2; to subtract put spaces round the minus, as in 24 - 3 1/2.",
        "16-5½\"        | 0 | write 16' 5½\"; to subtract put spaces round the minus",
        "10 + 24-3     | 5 | write 24' 3; to subtract",
        "24-3.5        | 0 | write 24' 3.5; to subtract",
        "24-3          | 0 | write 24' 3; to subtract put spaces round the minus, as in 24 - 3.",
        "24'3-8        | 0 | write 24'3 8/16",
        "24' - 3 1/2   | 3 | write 24' 3 1/2; to subtract write (24') - 3 1/2.",
        "24' -3        | 3 | write 24' 3; to subtract write (24') - 3.",
        "24'-16\"      | 3 | to subtract write (24') - 16\".",
        "1,250         | 0 | Write 1250, or 1.250.",
        "10-1/3        | 2 | more than one way",
        "3 5/4         | 1 | below one",
      })
  void asksWhichIsMeant(String typed, int position, String part) {
    EntryException e = refused(typed);
    assertThat(e).hasMessageContaining(part);
    assertThat(e.position()).isEqualTo(position);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      nullValues = "none",
      value = {
        "''          | 0 | number is missing",
        "abc         | 0 | number is missing",
        "24 yd       | 3 | not a unit",
        "24 3 1/2    | 3 | side by side",
        "24' 3'      | 4 | Only inches can follow feet",
        "(24'        | 0 | never closes",
        "24')        | 3 | never opened",
        "2' * 3'     | 3 | area",
        "2' / 3'     | 3 | divided by a length",
        "2' / 0      | 3 | zero",
        "2' / (1-1)  | 6 | more than one way",
        "1/0         | 2 | nothing",
        "24 +        | 4 | number is missing",
        "1.2.3       | 3 | one decimal mark",
        "12 192.5    | 3 | side by side",
        "24'#        | 3 | no place",
        "1e5         | 1 | not a unit",
      })
  void saysWhereItStopped(String typed, int position, String part) {
    EntryException e = refused(typed);
    assertThat(e).hasMessageContaining(part);
    assertThat(e.position()).isEqualTo(position);
    assertThat(e.cure()).isNotBlank();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "\u00a0"})
  void nothingTypedIsSaidSo(String typed) {
    assertThat(refused(typed)).hasMessageContaining("Nothing is typed");
  }

  @Test
  void aPlaceCanRefuseSigns() {
    assertThatThrownBy(
            () -> LengthEntry.read("-1", LengthUnit.INCH, LengthEntry.Allowed.NOT_NEGATIVE))
        .isInstanceOf(EntryException.class)
        .hasMessageContaining("below zero");
    assertThatThrownBy(() -> LengthEntry.read("0", LengthUnit.INCH, LengthEntry.Allowed.POSITIVE))
        .isInstanceOf(EntryException.class)
        .hasMessageContaining("more than zero");
  }

  @Test
  void longAndHugeTextIsRefused() {
    assertThat(refused("9".repeat(400))).hasMessageContaining("too large");
    assertThat(refused("9".repeat(5000))).hasMessageContaining("too long");
    assertThat(refused("(".repeat(500))).hasMessageContaining("missing");
  }

  /** Any jumble of the characters in use is read or refused, and never throws anything else. */
  @Test
  void anyJumbleIsReadOrRefused() {
    String alphabet = "0123456789'\"-+*/().,  ½¼ftinmc°%:′″⁄−\u0000é😀";
    Random random = new Random(20260101);
    int read = 0;
    for (int n = 0; n < 30_000; n++) {
      StringBuilder typed = new StringBuilder();
      for (int i = random.nextInt(14); i >= 0; i--) {
        typed.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      try {
        assertThat(LengthEntry.read(typed.toString(), LengthUnit.INCH)).isFinite();
        read++;
      } catch (EntryException e) {
        assertThat(e.position()).isBetween(0, typed.length());
        assertThat(e.getMessage()).isNotBlank();
      }
    }
    assertThat(read).isGreaterThan(300);
  }

  private static EntryException refused(String typed) {
    EntryException e =
        catchThrowableOfType(EntryException.class, () -> LengthEntry.read(typed, LengthUnit.INCH));
    assertThat(e).as("refused: %s", typed).isNotNull();
    return e;
  }
}
