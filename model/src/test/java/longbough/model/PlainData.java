package longbough.model;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiConsumer;

/**
 * Copies, compares and walks plain objects field by field, so that no new field is forgotten by a
 * test.
 */
final class PlainData {

  private PlainData() {}

  /**
   * Writes every field of one object into another of its class, arrays and parts of ours included.
   */
  static void copy(Object from, Object to) {
    each(
        from.getClass(),
        field -> {
          Object value = field.get(from);
          if (value != null && field.getType().isArray()) {
            Object target = field.get(to);
            int length = Array.getLength(value);
            if (Array.getLength(target) != length) {
              target = Array.newInstance(field.getType().getComponentType(), length);
              field.set(to, target);
            }
            System.arraycopy(value, 0, target, 0, length);
          } else if (part(field)) {
            copy(value, field.get(to));
          } else if (!Modifier.isFinal(field.getModifiers())) {
            field.set(to, value);
          }
        });
  }

  /** Gives every number, flag and named value of an object one that it does not start with. */
  static void fill(Object object, Random random) {
    each(
        object.getClass(),
        field -> {
          Object value = field.get(object);
          if (field.getType().isArray()) {
            for (int i = 0; i < Array.getLength(value); i++) {
              Array.set(value, i, other(Array.get(value, i), random));
            }
          } else if (part(field)) {
            fill(value, random);
          } else if (!Modifier.isFinal(field.getModifiers())) {
            field.set(object, other(value, random));
          }
        });
  }

  private static Object other(Object value, Random random) {
    if (value instanceof Double) {
      return 1 + random.nextDouble();
    } else if (value instanceof Integer) {
      return 1 + random.nextInt(1000);
    } else if (value instanceof Byte) {
      return (byte) (1 + random.nextInt(100));
    } else if (value instanceof Boolean flag) {
      return !flag;
    } else if (value instanceof Enum<?> one) {
      Object[] all = one.getDeclaringClass().getEnumConstants();
      return all[(one.ordinal() + 1) % all.length];
    }
    throw new IllegalStateException("no other value known for " + value);
  }

  /** Names of the numbers that differ in their bits, e.g. {@code limbs.woodKgC[3]}. */
  static List<String> differences(Object one, Object two) {
    List<String> found = new ArrayList<>();
    differences("", one, two, found);
    return found;
  }

  /** Names are made up only where something differs: most of a state doesn't. */
  private static void differences(String prefix, Object one, Object two, List<String> found) {
    each(
        one.getClass(),
        field -> {
          Object a = field.get(one);
          Object b = field.get(two);
          String name = prefix + field.getName();
          if (a == null || b == null) {
            if (a != b) {
              found.add(name);
            }
          } else if (field.getType().isArray()) {
            elements(name, a, b, found);
          } else if (part(field)) {
            differences(name + ".", a, b, found);
          } else if (!a.equals(b)) {
            found.add(name);
          }
        });
  }

  private static void elements(String name, Object a, Object b, List<String> found) {
    if (java.util.Arrays.deepEquals(new Object[] {a}, new Object[] {b})) {
      return;
    }
    int shared = Math.min(Array.getLength(a), Array.getLength(b));
    for (int i = 0; i < Math.max(Array.getLength(a), Array.getLength(b)); i++) {
      if (i >= shared || !Array.get(a, i).equals(Array.get(b, i))) {
        found.add(name + "[" + i + "]");
      }
    }
  }

  /** Whether two objects agree to the bit; quick, since arrays are compared whole. */
  static boolean same(Object one, Object two) {
    boolean[] same = {true};
    each(
        one.getClass(),
        field -> {
          Object a = field.get(one);
          Object b = field.get(two);
          if (part(field)) {
            same[0] &= same(a, b);
          } else {
            same[0] &= java.util.Arrays.deepEquals(new Object[] {a}, new Object[] {b});
          }
        });
    return same[0];
  }

  /** Whether every number is finite; quick, so that names are looked up only where one is not. */
  static boolean finite(Object object) {
    boolean[] finite = {true};
    each(
        object.getClass(),
        field -> {
          Object value = field.get(object);
          if (part(field)) {
            finite[0] &= finite(value);
          } else if (value instanceof double[] numbers) {
            for (double number : numbers) {
              finite[0] &= Double.isFinite(number);
            }
          } else if (value instanceof Double number) {
            finite[0] &= Double.isFinite(number);
          }
        });
    return finite[0];
  }

  /** Tells every value with its name. */
  static void walk(String prefix, Object object, BiConsumer<String, Object> visitor) {
    each(
        object.getClass(),
        field -> {
          Object value = field.get(object);
          String name = prefix + field.getName();
          if (value == null) {
            return;
          }
          if (field.getType().isArray()) {
            for (int i = 0; i < Array.getLength(value); i++) {
              visitor.accept(name + "[" + i + "]", Array.get(value, i));
            }
          } else if (part(field)) {
            walk(name + ".", value, visitor);
          } else {
            visitor.accept(name, value);
          }
        });
  }

  private static boolean part(Field field) {
    Class<?> type = field.getType();
    return !type.isPrimitive()
        && !type.isEnum()
        && !type.isRecord()
        && !type.isArray()
        && type.getName().startsWith("longbough.model.");
  }

  private interface Use {
    void of(Field field) throws IllegalAccessException;
  }

  private static void each(Class<?> type, Use use) {
    for (Field field : type.getDeclaredFields()) {
      if (!Modifier.isStatic(field.getModifiers()) && !field.isSynthetic()) {
        try {
          field.setAccessible(true);
          use.of(field);
        } catch (IllegalAccessException refused) {
          throw new IllegalStateException(refused);
        }
      }
    }
  }
}
