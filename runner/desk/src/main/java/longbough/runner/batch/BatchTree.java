package longbough.runner.batch;

import longbough.model.SimulationInput;

/**
 * One tree of a batch.
 *
 * @param name how it is listed
 * @param source the file, or the row of a sheet
 * @param input what is played; its first regime leaves the tree alone
 */
public record BatchTree(String name, String source, SimulationInput input) {}
