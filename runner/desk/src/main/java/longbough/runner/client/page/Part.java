package longbough.runner.client.page;

import longbough.runner.report.Page;

/** One part of the client report. */
interface Part {

  /** Writes the part, heading included; a part that has nothing to say writes nothing. */
  void write(Page page, ClientInput input);
}
