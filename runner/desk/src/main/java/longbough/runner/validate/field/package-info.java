/**
 * The model beside open measurements of many trees: the measured cloud with its prediction bands,
 * and trees grown or rebuilt by the model through it. The measurements are read from a folder that
 * is no part of the project.
 */
package longbough.runner.validate.field;
