package longbough.model.process;

import java.util.List;
import java.util.Set;

/**
 * One thing that happens in a tree. Stateless: reads the state, the parameters, this year's drivers
 * and its own random stream; writes only the parts it owns; books every carbon flow.
 */
public interface Process {
  /** Short name, also the key of its random stream. */
  String name();

  /** Bibliography keys of the sources of its equations. */
  List<String> sources();

  /** The parts of the state it may write. */
  Set<StatePart> owns();

  void run(YearContext context);
}
