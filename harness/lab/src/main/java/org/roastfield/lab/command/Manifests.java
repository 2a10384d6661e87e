package org.roastfield.lab.command;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.simulation.Settings;
import org.roastfield.lab.result.Inputs;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.result.RunManifest.InputFile;
import org.roastfield.lab.result.RunManifest.Setting;
import org.roastfield.lab.result.Version;

/** Manifests of commands. */
final class Manifests {

  private Manifests() {}

  static RunManifest of(
      String command, List<InputFile> inputs, Settings settings, List<Setting> more) {
    List<Setting> all = new ArrayList<>(Inputs.settings(settings));
    all.addAll(more);
    return new RunManifest(
        Version.text(), command, inputs, all, System.getProperty("java.version", "unknown"));
  }
}
