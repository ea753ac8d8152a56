package longbough.runner.validate.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longbough.runner.validate.lab.Lab;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.WoodAnatomy;

/**
 * Sapwood share of the section at breast height by wood anatomy and for the species of F10:
 *
 * <pre>share = 1 - (1 - depth / r)^2</pre>
 *
 * depth of the sapwood and trunk radius r with bark, mm. Bark is counted as sapwood's outside, so
 * that shares come out a little low.
 */
final class SapwoodSpread {
  static final String FILE = "sapwood-depth.csv";
  private static final String GENERA = "longbough/runner/validate/field/sapwood-genera.csv";
  private static final double MM_RADIUS_PER_CM_DBH = 5;
  private static final double DBH_M = 0.3;
  private static final List<String> HEADER =
      List.of("tag", "species", "dbh_cm", "sapwood_depth_mm", "uncertainty_mm", "boundary_clarity");

  /** Measured species, and who stands for them, in the order of the check's readings. */
  private static final List<List<String>> CHECKED =
      List.of(
          List.of("Quercus rubra", ""),
          List.of("Liriodendron tulipifera", ""),
          List.of("Fraxinus americana", "model: green ash"),
          List.of("Acer rubrum", ""),
          List.of("Fagus grandifolia", "model: European beech"));

  private SapwoodSpread() {}

  static SpreadTrial of(OpenData data, ModelReadings model) {
    Map<String, List<Double>> bySpecies = new HashMap<>();
    Map<String, List<Double>> byWood = new TreeMap<>();
    Map<String, String> woods = woods();
    for (DataRow row : data.rows(FILE, HEADER)) {
      double radius = MM_RADIUS_PER_CM_DBH * OpenData.measured(row, "dbh_cm");
      double depth = OpenData.measured(row, "sapwood_depth_mm");
      double heart = 1 - Math.min(1, depth / radius);
      double share = 1 - heart * heart;
      if (Double.isNaN(share)) {
        continue;
      }
      String species = row.text("species");
      bySpecies.computeIfAbsent(species, s -> new ArrayList<>()).add(share);
      String wood = woods.get(species.split(" ")[0]);
      if (wood != null) {
        byWood.computeIfAbsent(wood, w -> new ArrayList<>()).add(share);
      }
    }
    List<Spread> groups = new ArrayList<>();
    byWood.forEach((wood, values) -> groups.add(wood(wood, values)));
    for (int i = 0; i < CHECKED.size(); i++) {
      List<String> who = CHECKED.get(i);
      List<Double> values = bySpecies.get(who.get(0));
      if (values != null) {
        groups.add(Spread.of(who.get(0), who.get(1), values, model.get("F10", i)));
      }
    }
    return new SpreadTrial(
        "sapwood",
        "Sapwood share of the trunk's section",
        "",
        groups,
        "Forest trees of Virginia. Model: species as in check F10, grown ten years in the open from"
            + " 30 cm; by wood anatomy the median over the library at 30 cm.",
        "SCBI ForestGEO plot, Virginia, CC BY 4.0");
  }

  private static Spread wood(String wood, List<Double> values) {
    double[] shares =
        SpeciesLibrary.load().ids().stream()
            .filter(id -> SpeciesLibrary.load().get(id).woodAnatomy() == WoodAnatomy.of(wood))
            .map(id -> Lab.of(id, DBH_M, Lab.CONTINENTAL, 1, 1))
            .mapToDouble(lab -> lab.start().trunk.sapwoodShare)
            .toArray();
    String name = Character.toUpperCase(wood.charAt(0)) + wood.substring(1) + " wood";
    String note = "model: " + shares.length + " species";
    return Spread.of(
        name,
        note,
        values,
        new org.apache.commons.math3.stat.descriptive.rank.Median().evaluate(shares));
  }

  private static Map<String, String> woods() {
    Map<String, String> woods = new HashMap<>();
    for (DataRow row : DataFile.rows(GENERA, List.of("genus", "wood"))) {
      woods.put(row.text("genus"), row.text("wood"));
    }
    return woods;
  }
}
