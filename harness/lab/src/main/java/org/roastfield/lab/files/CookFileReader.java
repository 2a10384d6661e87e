package org.roastfield.lab.files;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;

/**
 * Reads cook files: one YAML 1.2 document of at most 1 MiB, every quantity with its unit.
 *
 * <p>Every mistake is a {@link CookFileException} with line and column. Nothing is clamped; what is
 * assumed stands among the facts.
 */
public final class CookFileReader {

  /** Largest size of a cook file [bytes]. */
  public static final int LARGEST = 1 << 20;

  /** What the key {@code roastfield} must say. */
  public static final String FORMAT = "cook/1";

  private static final int MOST_STAGES = 200;

  private final String fileName;
  private final Section section;
  private final List<Fact> facts = new ArrayList<>();

  private CookFileReader(String fileName, Section section) {
    this.fileName = fileName;
    this.section = section;
  }

  /**
   * Reads a file.
   *
   * @throws IOException if it cannot be read at all
   * @throws CookFileException if it is no cook
   */
  public static CookFile read(Path path) throws IOException {
    return parse(SourceText.name(path), SourceText.bytes(path, LARGEST));
  }

  /**
   * Bytes of a file, for {@link #parse}.
   *
   * @throws IOException if it cannot be read at all
   * @throws CookFileException if it is larger than {@link #LARGEST}
   */
  public static byte[] bytes(Path path) throws IOException {
    return SourceText.bytes(path, LARGEST);
  }

  /**
   * Reads the bytes of a file.
   *
   * @param fileName last part of its path, for messages
   * @param bytes content; not modified
   * @throws CookFileException if it is no cook
   */
  public static CookFile parse(String fileName, byte[] bytes) {
    if (bytes.length > LARGEST) {
      throw new CookFileException(
          fileName, 1, 1, bytes.length + " bytes", "at most " + LARGEST + " bytes");
    }
    SourceText source = SourceText.decode(fileName, bytes);
    Section section =
        new Entry(fileName, YamlTree.rootOf(source))
            .section(
                "roastfield", "name", "made-up", "starts", "altitude", "cut", "probes", "stages");
    return new CookFileReader(fileName, section).cookFile();
  }

  private CookFile cookFile() {
    Entry format = section.required("roastfield");
    if (!format.text().equals(FORMAT)) {
      throw format.error(FORMAT);
    }
    String name = section.required("name").name();
    boolean madeUp = section.optional("made-up").map(CookFileReader::flag).orElse(false);
    LocalDateTime starts = Clock.read(section.required("starts"));
    double pressure = pressure();
    CutSetup cut = CutReader.read(section.required("cut"));
    facts.addAll(cut.facts());
    List<Probe> probes = new ProbeReader(cut.cut().shape(), facts).read(section);
    StageReader stages =
        new StageReader(cut, pressure, new EndReader(starts, probes), new CoverReader(starts, cut));
    Entry stagesEntry = section.required("stages");
    if (stagesEntry.items().size() > MOST_STAGES) {
      throw stagesEntry.error("at most " + MOST_STAGES + " stages");
    }
    stagesEntry.items().forEach(stages::read);
    Cook cook = stagesEntry.guard(() -> new Cook(cut.cut(), stages.stages(), probes));
    return new CookFile(
        fileName,
        name,
        starts,
        madeUp,
        cut.food(),
        cook,
        pressure,
        cut.extent(),
        cut.taper(),
        facts,
        stages.setups(),
        section.statements());
  }

  private double pressure() {
    Entry entry = section.optional("altitude").orElse(null);
    if (entry == null) {
      facts.add(new Fact("altitude", "0 m (not stated, so assumed)"));
      return MoistAir.STANDARD_PRESSURE;
    }
    facts.add(new Fact("altitude", entry.text()));
    return MoistAir.pressureAtAltitude(entry.quantity(Dimension.ALTITUDE, -500, 9000));
  }

  private static boolean flag(Entry entry) {
    return switch (entry.text()) {
      case "true" -> true;
      case "false" -> false;
      default -> throw entry.error("true or false");
    };
  }
}
