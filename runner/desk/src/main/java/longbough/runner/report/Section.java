package longbough.runner.report;

/** One part of the report. */
interface Section {

  /** Writes the part, heading included; a part that has nothing to say writes nothing. */
  void write(Page page, ReportInput input);
}
