package org.roastfield.lab.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.SurfaceLaw;

/** Reads the stages of a cook in order. */
final class StageReader {

  private final CutSetup cut;
  private final double pressure;
  private final FaceReader faces;
  private final EndReader ends;
  private final List<Stage> stages = new ArrayList<>();
  private final List<StageSetup> setups = new ArrayList<>();
  private Reach reach;

  StageReader(CutSetup cut, double pressure, EndReader ends, CoverReader covers) {
    this.cut = cut;
    this.pressure = pressure;
    this.faces = new FaceReader(cut, pressure, covers);
    this.ends = ends;
    this.reach = Reach.of(cut.cut().startTemperature());
  }

  /** Stages for the core, those read so far. */
  List<Stage> stages() {
    return List.copyOf(stages);
  }

  /** Stages as stated, those read so far. */
  List<StageSetup> setups() {
    return List.copyOf(setups);
  }

  void read(Entry entry) {
    Section section =
        entry.section(
            "name",
            "chamber",
            "box",
            "wetness",
            "baste",
            "emissivity",
            "contact",
            "board",
            "coal-bed",
            "wrap",
            "lid",
            "faces",
            "turns",
            "end");
    Entry nameEntry = section.required("name");
    String name = nameEntry.name();
    if (setups.stream().anyMatch(setup -> setup.name().equals(name))) {
      throw nameEntry.error("a name that no earlier stage has");
    }
    Optional<Entry> turns = section.optional("turns");
    if (turns.isPresent()) {
      readTurns(name, section, turns.get());
    } else {
      readStill(name, section);
    }
  }

  private void readStill(String name, Section section) {
    FaceSetup upper = upper(section);
    FaceSetup lower = lower(section);
    widen(upper);
    widen(lower);
    EndReader.Rule rule = ends.read(section.required("end"), reach);
    int first = stages.size();
    SurfaceLaw law = upper.law(pressure);
    SurfaceLaw other = lower.equals(upper) ? law : lower.law(pressure);
    Stage plain = new Stage(name, law, other, rule.end());
    add(section, basted(section, plain), upper.cover().lid());
    setups.add(
        new StageSetup(
            name,
            upper,
            lower,
            upper,
            first,
            stages.size() - first,
            rule.words(),
            StageFacts.of(upper, lower, section)));
  }

  /** With the water that is put on when it begins: all round, or on a slab's upper face. */
  private Stage basted(Section section, Stage stage) {
    Optional<Entry> entry = section.optional("baste");
    if (entry.isEmpty()) {
      return stage;
    }
    if (!stage.upper().holdsWater()) {
      throw entry.get().error("no water beside a face of constant wetness: say wetness: drying");
    }
    double water = entry.get().quantity(Dimension.WATER_PER_AREA, 0, 2);
    boolean slab = cut.cut().shape() instanceof Slab;
    return stage.with(slab ? new Wetting(water, 0) : Wetting.allRound(water));
  }

  /** A stage in which the lid is opened is cut where it moves. */
  private void add(Section section, Stage stage, Optional<LidSetup> lid) {
    if (lid.isEmpty()) {
      stages.add(stage);
    } else {
      stages.addAll(section.required("end").guard(() -> stage.cutAt(lid.get().lid().edges())));
    }
  }

  private void readTurns(String name, Section section, Entry entry) {
    section
        .optional("faces")
        .or(() -> section.optional("end"))
        .ifPresent(
            unwanted -> {
              throw unwanted.error("neither faces nor end beside turns, which say both");
            });
    section
        .optional("box")
        .or(() -> section.optional("lid"))
        .or(() -> section.optional("baste"))
        .ifPresent(
            unwanted -> {
              throw unwanted.error("neither box nor lid nor baste beside turns");
            });
    section.required("contact");
    FaceSetup touched = faces.ofStage(section, Side.lowerOf(cut.cut().shape()));
    FaceSetup free = faces.ofStage(section, Side.upperOf(cut.cut().shape())).turnedAway();
    widen(touched);
    TurnsReader turns = TurnsReader.read(entry, cut.cut().shape() instanceof Slab);
    int first = stages.size();
    stages.addAll(turns.stages(name, touched.law(pressure), free.law(pressure)));
    List<Fact> facts = new ArrayList<>(StageFacts.of(touched, touched, section));
    facts.add(new Fact("turns", turns.words()));
    setups.add(
        new StageSetup(
            name, touched, touched, free, first, stages.size() - first, turns.words(), facts));
  }

  private FaceSetup upper(Section section) {
    Optional<Entry> entry = section.optional("faces");
    if (section.has("box")) {
      entry.ifPresent(
          unwanted -> {
            throw unwanted.error("no faces beside box");
          });
      return faces.inBox(section);
    }
    if (entry.isEmpty()) {
      return faces.ofStage(section, Side.upperOf(cut.cut().shape()));
    }
    if (!(cut.cut().shape() instanceof Slab)) {
      throw entry.get().error("no faces, which only a slab has");
    }
    Section both = entry.get().section("upper", "lower");
    refuseUnused(section, both.required("upper"), both.required("lower"));
    return faces.ofFace(both.required("upper"), section, Side.UPPER);
  }

  /** What the faces state themselves, nobody reads in their stage. */
  private static void refuseUnused(Section stage, Entry upper, Entry lower) {
    for (String key : List.of("chamber", "wetness", "emissivity")) {
      refuse(stage, key, upper.hasAny(key) && lower.hasAny(key));
    }
    for (String key : List.of("contact", "board")) {
      refuse(stage, key, upper.hasAny("contact", "board") && lower.hasAny("contact", "board"));
    }
    refuse(stage, "coal-bed", lower.hasAny("coal-bed"));
  }

  private static void refuse(Section stage, String key, boolean unused) {
    stage
        .optional(key)
        .filter(entry -> unused)
        .ifPresent(
            entry -> {
              throw entry.error("no " + key + " beside faces that state their own");
            });
  }

  private FaceSetup lower(Section section) {
    if (section.has("box")) {
      return faces.inBox(section);
    }
    return section
        .optional("faces")
        .map(entry -> entry.section("upper", "lower").required("lower"))
        .map(face -> faces.ofFace(face, section, Side.LOWER))
        .orElseGet(() -> faces.ofStage(section, Side.lowerOf(cut.cut().shape())));
  }

  private void widen(FaceSetup face) {
    reach = reach.with(face, pressure);
  }
}
