package org.roastfield.lab.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.inference.ObservedNumber;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.cooker.LoggedCase;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.synthetic.ScenarioCut;

/** A weight before tells of the size of a cut. */
class WeighedCutTest {

  private final SpoiledLogs.Written good = SpoiledLogs.good(ScenarioCut.PORK_LOIN, 31);

  private static ObservedNumber weight(LoggedCase logged) {
    return logged.numbers().stream()
        .filter(number -> number.reading().name().startsWith("weight of"))
        .findFirst()
        .orElseThrow();
  }

  private LoggedCase logged(CookFile file) {
    return LoggedCase.of(file, good.log(), LogSpan.ALL, Optional.empty());
  }

  /** 2.175 kg of 2.367 kg, which a long round cut has with its diameter squared. */
  @Test
  void weight_isReadAgainstThatOfTheSizes() {
    LoggedCase logged = logged(good.file());
    ObservedNumber weight = weight(logged);
    assertEquals(2.175 / 2.367, weight.reading().value(), 1e-4);
    assertEquals(0.1 * weight.reading().value(), weight.reading().spread(), 1e-12);
    Cook thicker = logged.cook().apply(ParameterPoint.empty().with("size", 1.1, 1));
    assertEquals(1.21, weight.computed().applyAsDouble(thicker, good.made().result()), 1e-9);
  }

  /** A weight that the file states as well says nothing of the sizes beside it. */
  @Test
  void statedWeight_doesNotStandForTheSizes() {
    String text = good.yaml().replaceFirst("length: 310 mm", "length: 310 mm\n  weight: 2.1 kg");
    CookFile file = CookFileReader.parse("cook.yaml", text.getBytes(StandardCharsets.UTF_8));
    assertEquals(2.1, file.extent().orElseThrow().mass(), 1e-12);
    assertEquals(2.175 / 2.367, weight(logged(file)).reading().value(), 1e-4);
  }

  @Test
  void sizeThatScaleAndCoreContradict_isSaid_andTheStatedOneIsNot() {
    assertTrue(sizeWords(good).isEmpty());
    String said = String.join("\n", sizeWords(SpoiledLogs.statedSize(good, 1 / 1.2)));
    assertTrue(said.contains("the cut is not of the stated size"), said);
  }

  private static List<String> sizeWords(SpoiledLogs.Written log) {
    return Asked.about(log).findings().stream()
        .filter(finding -> finding.kind() == Finding.Kind.DATA)
        .filter(finding -> finding.weight() == Finding.Weight.DOUBT)
        .map(Finding::words)
        .toList();
  }
}
