package org.roastfield.lab.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.roastfield.lab.result.RunManifest.InputFile;
import org.roastfield.lab.result.RunManifest.Setting;

/** A manifest as JSON. */
public final class ManifestJson {

  private ManifestJson() {}

  /** Text of manifest.json. */
  public static String text(RunManifest manifest) {
    ObjectNode root = Json.document("roastfield-manifest", 1);
    root.put("roastfield_version", manifest.version());
    root.put("command", manifest.command());
    root.put("java_version", manifest.javaVersion());
    ArrayNode inputs = root.putArray("inputs");
    for (InputFile file : manifest.inputs()) {
      inputs
          .addObject()
          .put("role", file.role())
          .put("name", file.name())
          .put("bytes", file.bytes())
          .put("sha256", file.sha256());
    }
    ObjectNode settings = root.putObject("settings");
    for (Setting setting : manifest.settings()) {
      settings.put(setting.name(), setting.value());
    }
    return Json.text(root);
  }
}
