package longbough.model.parameter;

/**
 * Long-term monthly climate, January to December.
 *
 * @param name preset name or the user's own
 * @param latitudeDeg latitude, south negative
 * @param temperatureC monthly mean air temperature, degC
 * @param rainMm monthly rain, mm
 * @param radiationMjM2Day global radiation on flat ground, MJ m-2 day-1
 * @param gustTenYearMs gust (3 s, 10 m, open country) reached once in ten years on average, m/s
 * @param gustFiftyYearMs gust reached once in fifty years on average, m/s
 * @param source where the numbers come from, for the report
 */
public record Climate(
    String name,
    double latitudeDeg,
    double[] temperatureC,
    double[] rainMm,
    double[] radiationMjM2Day,
    double gustTenYearMs,
    double gustFiftyYearMs,
    String source) {}
