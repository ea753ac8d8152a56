/**
 * From a scenario file to the input of a run. The reader keeps what was written and reports every
 * mistake together; the resolver fills in what was left out and says so, sentence by sentence.
 */
package longbough.runner.scenario;
