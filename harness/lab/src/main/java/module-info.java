/** Files, replay, reports and the command line of Roastfield. */
module org.roastfield.lab {
  requires static transitive org.jspecify;
  requires transitive org.roastfield.core;
  requires commons.math3;
  requires com.fasterxml.jackson.databind;
  requires de.siegmar.fastcsv;
  requires info.picocli;
  requires org.snakeyaml.engine;

  exports org.roastfield.lab.calibration;
  exports org.roastfield.lab.files;
  exports org.roastfield.lab.intake;
  exports org.roastfield.lab.notebook;
  exports org.roastfield.lab.timeline;
  exports org.roastfield.lab.plan;
  exports org.roastfield.lab.pit;
  exports org.roastfield.lab.replay;
  exports org.roastfield.lab.result;
  exports org.roastfield.lab.salting;
  exports org.roastfield.lab.report;
  exports org.roastfield.lab.score;
  exports org.roastfield.lab.synthetic;

  opens org.roastfield.lab.command to
      info.picocli;
}
