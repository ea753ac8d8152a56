package longbough.model.odd;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longbough.model.process.Process;
import longbough.model.state.CrownFrame;
import longbough.model.state.Limbs;
import longbough.model.state.Pools;
import longbough.model.state.Roots;
import longbough.model.state.Sections;
import longbough.model.state.Sprouts;
import longbough.model.state.Trunk;
import longbough.model.state.Vitality;
import longbough.model.state.Wounds;

/** The description with its generated parts, each between two marks that name it, made anew. */
public final class Odd {
  private static final List<Class<?>> STATE =
      List.of(
          Trunk.class,
          Limbs.class,
          Sprouts.class,
          Wounds.class,
          Sections.class,
          Pools.class,
          Roots.class,
          CrownFrame.class,
          Vitality.class);

  private static final List<String> EDITORS =
      List.of(
          "DeadwoodEditor",
          "ThinEditor",
          "RaiseEditor",
          "WindowEditor",
          "ReduceEditor",
          "TopEditor",
          "ShearEditor",
          "StripEditor",
          "SelectEditor",
          "RestoreEditor");

  /** Other classes whose Javadoc gives equations; some are closed, so they are named. */
  private static final List<String> FURTHER =
      List.of(
          "longbough.model.process.LightField",
          "longbough.model.geometry.Allometry",
          "longbough.model.geometry.CrownShape",
          "longbough.model.geometry.SectionModulus",
          "longbough.model.tree.TreeReconstruction",
          "longbough.model.tree.TrunkProfile",
          "longbough.model.tree.FirstLeaves",
          "longbough.model.tree.OldDamage",
          "longbough.model.visit.CrewTime",
          "longbough.model.parameter.FutureParameters",
          "longbough.model.random.RandomStream");

  private static final Pattern PART =
      Pattern.compile("<!-- generated (\\w+) -->\\n.*?<!-- end \\1 -->", Pattern.DOTALL);

  private Odd() {}

  /**
   * The text with every generated part as it should be.
   *
   * @param processes of the yearly cycle, in the order of the description
   */
  public static String renewed(String text, List<Process> processes) {
    Map<String, String> parts = parts(processes);
    List<String> seen = new ArrayList<>();
    String renewed =
        PART.matcher(text)
            .replaceAll(
                match -> {
                  String name = match.group(1);
                  seen.add(name);
                  return Matcher.quoteReplacement(
                      "<!-- generated "
                          + name
                          + " -->\n\n"
                          + parts.get(name)
                          + "\n\n<!-- end "
                          + name
                          + " -->");
                });
    if (!seen.containsAll(parts.keySet())) {
      throw new IllegalStateException("ODD.md lacks one of the parts " + parts.keySet());
    }
    return renewed;
  }

  private static Map<String, String> parts(List<Process> processes) {
    Map<String, String> parts = new LinkedHashMap<>();
    TreeSet<String> sources = new TreeSet<>();
    List<String> types = new ArrayList<>();
    for (Process process : processes) {
      sources.addAll(process.sources());
      types.add(process.getClass().getName());
    }
    parts.put("state", state());
    parts.put("operations", operations());
    parts.put("submodels", submodels(types));
    parts.put("further", submodels(FURTHER));
    parts.put("parameters", ParameterTables.general());
    parts.put("species", ParameterTables.species());
    parts.put("sources", ParameterTables.sources(sources));
    return parts;
  }

  /** What each editor says of itself; the classes are closed, so they are named. */
  private static String operations() {
    StringBuilder out = new StringBuilder();
    for (String editor : EDITORS) {
      String says = SourceFile.of("longbough.model.editor." + editor).says();
      out.append("* ").append(says.replaceAll("\\s+", " ")).append('\n');
    }
    return out.toString().strip();
  }

  private static String submodels(List<String> types) {
    StringBuilder out = new StringBuilder();
    for (String type : types) {
      out.append("\n#### ").append(type.substring(type.lastIndexOf('.') + 1)).append("\n\n");
      out.append(SourceFile.of(type).says()).append('\n');
    }
    return out.toString().strip();
  }

  private static String state() {
    StringBuilder out = new StringBuilder();
    for (Class<?> type : STATE) {
      SourceFile file = SourceFile.of(type.getName());
      out.append("\n### ").append(type.getSimpleName()).append("\n\n");
      out.append(file.says()).append("\n\n");
      out.append("| variable | means |\n|---|---|\n");
      for (SourceFile.Field field : file.fields()) {
        String name = "`" + field.name() + (field.many() ? "[]" : "") + "`";
        out.append("| ").append(name).append(" | ").append(field.means()).append(" |\n");
      }
    }
    return out.toString().strip();
  }
}
