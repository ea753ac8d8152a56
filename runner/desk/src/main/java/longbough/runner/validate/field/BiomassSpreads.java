package longbough.runner.validate.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longbough.shared.source.DataRow;

/** Leaf mass per area, and root over shoot, of trees that were weighed. */
final class BiomassSpreads {
  static final String FILE = "baad-trees.csv";
  private static final String SOURCE =
      "Falster D.S. et al. 2015. BAAD: a Biomass And Allometry Database for woody plants. Ecology"
          + " 96:1445; data CC0";
  private static final String BROAD = "Deciduous broadleaves";
  private static final String NEEDLE = "Evergreen needle trees";
  private static final List<String> HEADER =
      List.of(
          "study",
          "species",
          "pft",
          "condition",
          "vegetation",
          "crown_status",
          "latitude_deg",
          "mean_annual_temp_c",
          "age_yr",
          "dbh_m",
          "height_m",
          "crown_base_m",
          "crown_diameter_m",
          "leaf_area_m2",
          "leaf_area_basis",
          "sapwood_area_m2",
          "heartwood_area_m2",
          "leaf_mass_kg",
          "stem_mass_kg",
          "branch_mass_kg",
          "root_mass_kg",
          "fine_root_mass_kg",
          "aboveground_mass_kg",
          "lma_kg_m2",
          "wood_density_kg_m3");

  private BiomassSpreads() {}

  static List<SpreadTrial> of(OpenData data, ModelReadings model) {
    Map<String, List<Double>> leafMass = new TreeMap<>();
    Map<String, List<Double>> rootShare = new TreeMap<>();
    for (DataRow row : data.rows(FILE, HEADER)) {
      String basis = row.text("leaf_area_basis");
      String group = group(row.text("pft"));
      if (group == null) {
        continue;
      }
      double mass = OpenData.measured(row, "lma_kg_m2");
      if (mass > 0 && (basis.equals("one-sided") || basis.equals("projected"))) {
        leafMass.computeIfAbsent(group, g -> new ArrayList<>()).add(mass);
      }
      double ratio =
          OpenData.measured(row, "root_mass_kg") / OpenData.measured(row, "aboveground_mass_kg");
      if (ratio > 0 && !Double.isInfinite(ratio)) {
        rootShare.computeIfAbsent(group, g -> new ArrayList<>()).add(ratio);
      }
    }
    double broad = model.get("F08", 0);
    return List.of(
        new SpreadTrial(
            "leaf-mass",
            "Leaf mass per leaf area",
            "kg/m\u00b2",
            groups(leafMass, broad, broad * model.get("F08", 1)),
            "One-sided or projected leaf area only; the needle trees are loblolly pines of one study."
                + " Model: as in check F08, mean over the crown.",
            SOURCE),
        new SpreadTrial(
            "root-shoot",
            "Root mass over mass above ground",
            "",
            groups(rootShare, model.get("F09", 0), model.get("F09", 1)),
            "Trees from 5 cm dbh, mostly of forests and half of them below 13 cm. Model: as in check"
                + " F09, grown ten years from 30 cm in the open.",
            SOURCE));
  }

  private static String group(String type) {
    return switch (type) {
      case "DA" -> BROAD;
      case "EG" -> NEEDLE;
      default -> null;
    };
  }

  private static List<Spread> groups(
      Map<String, List<Double>> values, double broad, double needle) {
    return values.entrySet().stream()
        .map(
            e -> Spread.of(e.getKey(), "", e.getValue(), e.getKey().equals(BROAD) ? broad : needle))
        .toList();
  }
}
