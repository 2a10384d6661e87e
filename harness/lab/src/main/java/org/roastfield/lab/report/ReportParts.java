package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.Fact;
import org.roastfield.lab.files.StageSetup;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.timeline.Caution;
import org.roastfield.lab.timeline.TemperatureScale;

/** Parts that every report has: cautions, what was assumed, and what the result was made from. */
final class ReportParts {

  private ReportParts() {}

  /** Cautions as a list. */
  static void cautions(Page page, List<Caution> cautions) {
    page.html().element("h3", "Cautions").newLine().open("ul", "class", "cautions").newLine();
    for (Caution caution : cautions) {
      page.html().open("li").element("strong", caution.subject() + ".");
      page.html().text(" " + caution.text());
      if (!caution.source().isEmpty()) {
        page.html().element("small", "Source: " + caution.source() + ".");
      }
      page.html().close().newLine();
    }
    page.html().close().newLine();
  }

  /** What the cook file states of the cut and the cook. */
  static Table facts(CookFile file) {
    List<List<String>> rows = new ArrayList<>();
    for (Fact fact : file.facts()) {
      rows.add(List.of(fact.subject(), fact.text()));
    }
    return Table.ofFileText("The cook, as its file states it", List.of("what", "stated"), rows);
  }

  /** What the cook file states of the surroundings, a column for each stage and face. */
  static Table surroundings(CookFile file, TemperatureScale scale) {
    Map<String, FaceSetup> faces = new LinkedHashMap<>();
    List<String> ends = new ArrayList<>();
    int number = 0;
    for (StageSetup stage : file.stages()) {
      number++;
      String name = number + " " + stage.name();
      boolean alike = stage.upper().equals(stage.lower());
      faces.put(alike ? name : name + ", upper face", stage.upper());
      ends.add(stage.end());
      if (!alike) {
        faces.put(name + ", lower face", stage.lower());
        ends.add(stage.end());
      }
    }
    List<String> headings = Table.row("quantity", List.copyOf(faces.keySet()));
    List<List<String>> rows = new ArrayList<>();
    rows.add(Table.row("ends", ends));
    quantities(scale).forEach((name, text) -> rows.add(row(name, text, faces)));
    return Table.ofWords("Surroundings of the cut, stage by stage", headings, rows);
  }

  /** Files, settings and versions. */
  static void manifest(Page page, RunManifest manifest) {
    page.paragraph(
        "Roastfield "
            + manifest.version()
            + ", command "
            + manifest.command()
            + ", Java "
            + manifest.javaVersion()
            + ". The same files and settings give the same numbers.");
    List<List<String>> inputs = new ArrayList<>();
    for (RunManifest.InputFile input : manifest.inputs()) {
      inputs.add(List.of(input.role(), input.name(), Long.toString(input.bytes()), input.sha256()));
    }
    page.table(Table.ofFileText("Files read", List.of("role", "file", "bytes", "SHA-256"), inputs));
    List<List<String>> settings = new ArrayList<>();
    manifest.settings().forEach(setting -> settings.add(List.of(setting.name(), setting.value())));
    page.table(Table.ofWords("Settings", List.of("setting", "value"), settings));
  }

  private static List<String> row(
      String name, Function<FaceSetup, String> text, Map<String, FaceSetup> faces) {
    return Table.row(name, faces.values().stream().map(text).toList());
  }

  private static Map<String, Function<FaceSetup, String>> quantities(TemperatureScale scale) {
    Map<String, Function<FaceSetup, String>> rows = new LinkedHashMap<>();
    rows.put("air", face -> Numbers.text(face.air(), scale));
    rows.put("walls", face -> Numbers.text(face.walls(), scale));
    rows.put("humidity ratio", face -> Numbers.decimal(face.humidityRatio(), 4));
    rows.put("heat transfer by convection", face -> face.heatTransfer().words());
    rows.put("emissivity", face -> Numbers.decimal(face.emissivity(), 2));
    rows.put("wetness", FaceSetup::wetnessWords);
    rows.put("water activity", face -> Numbers.decimal(face.waterActivity(), 3));
    rows.put("hot metal", face -> contact(face, scale));
    rows.put("coal bed", face -> bed(face, scale));
    return rows;
  }

  private static String contact(FaceSetup face, TemperatureScale scale) {
    return face.contact()
        .map(
            contact ->
                Numbers.text(contact.plateTemperature(), scale)
                    + ", "
                    + contact.words()
                    + ", on "
                    + Numbers.decimal(100 * contact.share(), 0)
                    + " % of the face")
        .orElse("none");
  }

  private static String bed(FaceSetup face, TemperatureScale scale) {
    return face.bed()
        .map(
            bed ->
                Numbers.text(bed.temperature(), scale)
                    + ", "
                    + Numbers.decimal(100 * bed.viewFactor(), 0)
                    + " % of what the face sees")
        .orElse("none");
  }
}
