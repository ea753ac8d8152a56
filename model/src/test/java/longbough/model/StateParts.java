package longbough.model;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import longbough.model.process.StatePart;
import longbough.model.state.TreeState;

/** Which part of the state each of its fields belongs to, for the table of ownership. */
final class StateParts {
  private static final Set<String> FOLIAGE =
      Set.of(
          "limbs.leafAreaM2",
          "limbs.leafKgC",
          "limbs.budFullness",
          "limbs.fullLeafAreaM2",
          "limbs.leafRoomM2",
          "limbs.freshLeafM2",
          "limbs.leafReturnKgCM2",
          "pools.leafAgeShare");
  private static final Set<String> RESERVE =
      Set.of(
          "pools.reserveKgC",
          "pools.reserveCeilingKgC",
          "pools.reserveFloorKgC",
          "pools.stores.share",
          "pools.stores.ceilingKgC",
          "pools.stores.course");

  /** Of the frame, the crown's outline follows the limbs. */
  private static final Set<String> OUTLINE =
      Set.of("frame.crownBaseM", "frame.shadedBaseM", "frame.crownLengthM");

  private StateParts() {}

  /** Parts in which two states differ; throws where they differ in what no process may write. */
  static Set<StatePart> changed(TreeState before, TreeState after) {
    Set<StatePart> parts = EnumSet.noneOf(StatePart.class);
    for (String field : PlainData.differences(before, after)) {
      parts.add(of(field));
    }
    return parts;
  }

  /** Fields that differ, without their places in arrays. */
  static Set<String> changedFields(TreeState before, TreeState after, Set<StatePart> parts) {
    Set<String> fields = new TreeSet<>();
    for (String field : PlainData.differences(before, after)) {
      if (parts.contains(of(field))) {
        fields.add(bare(field));
      }
    }
    return fields;
  }

  static StatePart of(String field) {
    String bare = bare(field);
    if (FOLIAGE.contains(bare)) {
      return StatePart.FOLIAGE;
    }
    if (RESERVE.contains(bare)) {
      return StatePart.RESERVE;
    }
    String part = bare.substring(0, Math.max(0, bare.indexOf('.')));
    return switch (part) {
      case "trunk" -> StatePart.TRUNK;
      case "limbs" -> StatePart.LIMBS;
      case "sprouts" -> StatePart.SPROUTS;
      case "wounds" -> StatePart.WOUNDS;
      case "pools" -> StatePart.POOLS;
      case "roots" -> StatePart.ROOTS;
      case "sections" -> StatePart.SECTIONS;
      case "vitality" -> StatePart.VITALITY;
      case "frame" -> OUTLINE.contains(bare) ? StatePart.LIMBS : kept(field);
      default -> kept(field);
    };
  }

  private static StatePart kept(String field) {
    throw new AssertionError(
        field + " belongs to no process: the year and most of the frame stay as they are");
  }

  private static String bare(String field) {
    int bracket = field.indexOf('[');
    return bracket < 0 ? field : field.substring(0, bracket);
  }

  /** Fields with a number that is neither finite nor meant to be open. */
  static List<String> notFinite(Object object) {
    if (PlainData.finite(object)) {
      return List.of();
    }
    Set<String> found = new TreeSet<>();
    PlainData.walk(
        "",
        object,
        (name, value) -> {
          if (value instanceof Double number && !Double.isFinite(number)) {
            found.add(name);
          }
        });
    return List.copyOf(found);
  }
}
