package longbough.model.history;

import longbough.model.state.CauseOfDeath;

/** A dated thing that happened to one tree in one future. */
public sealed interface TreeEvent {
  int year();

  record Pruned(int year, String operation, double foliageRemovedFraction, double largestCutM)
      implements TreeEvent {}

  /** Growing-season water supply over demand of the worst month, 0 to 1. */
  record Drought(int year, double waterShare) implements TreeEvent {}

  record Defoliated(int year, double share) implements TreeEvent {}

  record Frosted(int year, double share) implements TreeEvent {}

  /** The strongest gust of the year broke limbs. */
  record LimbBroken(int year, double diameterM, boolean sproutUnion) implements TreeEvent {}

  record ReserveLow(int year, double fraction) implements TreeEvent {}

  record ReserveRecovered(int year, double fraction) implements TreeEvent {}

  record Sprouted(int year, double count) implements TreeEvent {}

  record LimbDied(int year, double heightM, double diameterM) implements TreeEvent {}

  record WoundClosed(int year, double cutDiameterM, int ageYears) implements TreeEvent {}

  record DecayReached(int year, double heightM, double strengthLoss) implements TreeEvent {}

  record Died(int year, CauseOfDeath cause) implements TreeEvent {}
}
