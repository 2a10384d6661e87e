package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.roastfield.core.cook.StageEnd;

/** A cook file that is read and written is the same cook. */
class CookFileRoundTripPropertiesTest {

  /** What goes into a cook file, in SI units. */
  private record Numbers(
      double thickness, double start, double air, double wetness, double minutes, String name) {}

  @Provide
  Arbitrary<Numbers> numbers() {
    return Combinators.combine(
            Arbitraries.doubles().between(0.005, 0.3).ofScale(9),
            Arbitraries.doubles().between(272.6, 300).ofScale(9),
            Arbitraries.doubles().between(310, 500).ofScale(9),
            Arbitraries.doubles().between(0, 1).ofScale(9),
            Arbitraries.doubles().between(1, 600).ofScale(9),
            names())
        .as(Numbers::new);
  }

  private static Arbitrary<String> names() {
    return Arbitraries.strings()
        .ofMinLength(1)
        .ofMaxLength(60)
        .filter(text -> !text.isBlank() && text.equals(text.strip()))
        .filter(text -> text.chars().noneMatch(Character::isISOControl))
        .filter(text -> text.codePoints().noneMatch(p -> p >= 0xD800 && p <= 0xDFFF));
  }

  private static Statement.Keys cook(Numbers numbers) {
    Statement.Keys cut =
        Statement.keys()
            .with("shape", "slab")
            .with("thickness", Dimension.LENGTH.exactText(numbers.thickness))
            .with("start-temperature", Dimension.TEMPERATURE.exactText(numbers.start))
            .with("material", "beef loin");
    Statement.Keys chamber =
        Statement.keys()
            .with("air", Dimension.TEMPERATURE.exactText(numbers.air))
            .with("humidity-ratio", "0.01")
            .with("heat-transfer", "6 W/(m²·K)");
    Statement.Keys end =
        Statement.keys().with("after", Dimension.TIME.exactText(60 * numbers.minutes));
    Statement.Keys stage =
        Statement.keys()
            .with("name", numbers.name)
            .with("chamber", chamber)
            .with("wetness", Dimension.SHARE.exactText(numbers.wetness))
            .with("end", end);
    return Statement.keys()
        .with("roastfield", CookFileReader.FORMAT)
        .with("name", numbers.name)
        .with("starts", "2026-06-13T18:00")
        .with("cut", cut)
        .with("stages", Statement.items(stage));
  }

  @Property
  void madeCook_isReadWithItsNumbers_andWrittenAlike(@ForAll("numbers") Numbers numbers) {
    String yaml = CookFileWriter.yaml(cook(numbers));
    CookFile file = CookTexts.read(yaml);
    assertEquals(yaml, CookFileWriter.yaml(file.statements()));
    assertEquals(numbers.name, file.name());
    assertEquals(numbers.thickness, file.cook().cut().shape().thickness(), 1e-15);
    assertEquals(numbers.start, file.cook().cut().startTemperature(), 1e-12);
    FaceSetup face = file.stages().get(0).upper();
    assertEquals(numbers.air, face.air(), 1e-12);
    assertEquals(numbers.wetness, face.wetness());
    assertEquals(
        60 * numbers.minutes,
        ((StageEnd.After) file.cook().stages().get(0).end()).duration(),
        1e-11);
  }

  @Example
  void everyValidFile_isTheSameCookAfterwards() throws IOException {
    List<Path> files =
        CorpusTest.files("cook").stream()
            .filter(path -> CorpusTest.expected(path).equals("valid"))
            .toList();
    for (Path path : files) {
      CookFile first = CookFileReader.parse("cook.yaml", Files.readAllBytes(path));
      CookFile second = CookTexts.read(CookFileWriter.yaml(first.statements()));
      assertEquals(first.statements(), second.statements(), path::toString);
      assertEquals(first.facts(), second.facts(), path::toString);
      assertEquals(first.notes(), second.notes(), path::toString);
      assertEquals(first.extent(), second.extent(), path::toString);
      assertEquals(first.cook().cut().shape(), second.cook().cut().shape(), path::toString);
      assertEquals(first.cook().probes(), second.cook().probes(), path::toString);
      for (int i = 0; i < first.stages().size(); i++) {
        assertEquals(first.stages().get(i).facts(), second.stages().get(i).facts());
        assertEquals(first.stages().get(i).end(), second.stages().get(i).end());
      }
    }
  }
}
