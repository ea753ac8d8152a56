/**
 * The table of cuts as a page: how the faces close, drawn to scale, and what cuts of four sizes
 * lead to. Everything comes from {@link longbough.runner.cuts}.
 */
package longbough.runner.cuts.page;
