package longbough.runner.chart;

import java.awt.Color;
import longbough.model.state.CauseOfDeath;

/** A colour a cause, apart for colour-blind readers and dark enough for white text. */
final class CauseColours {
  private CauseColours() {}

  static Color of(CauseOfDeath cause) {
    return new Color(
        switch (cause) {
          case STARVED -> 0xb04a00;
          case DROUGHT -> 0x7a6400;
          case INSECTS -> 0x0f6e5b;
          case DIEBACK -> 0x8a2f78;
          case DECLINE -> 0x4a3aa0;
          case BACKGROUND -> 0x6e6e6e;
          case STEM_FAILURE -> 0x0b5fa5;
          case UPROOTED -> 0x333333;
          case NONE -> 0xffffff;
        });
  }
}
