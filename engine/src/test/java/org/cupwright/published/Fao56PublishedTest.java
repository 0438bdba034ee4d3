package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.cupwright.testing.MadeWeather;
import org.cupwright.turf.water.Fao56;
import org.cupwright.turf.water.Hargreaves;
import org.cupwright.turf.water.PenmanMonteith;
import org.cupwright.turf.water.WeatherStation;
import org.cupwright.turf.weather.WeatherDay;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Worked examples of FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and Smith 1998). Values as printed
 * there; each tolerance is half a unit of the last printed digit unless a line says otherwise.
 */
class Fao56PublishedTest {
    /**
     * Example 18: Uccle, 50°48'N, 100 m, 6 July; wind 10 km/h at 10 m. Sunshine 9.25 h is recalled, the other inputs
     * were read.
     */
    private final WeatherDay uccleJuly = MadeWeather.humid(WeatherDay.of(LocalDate.of(2015, 7, 6), 21.5, 12.3), 84, 63);

    private final PenmanMonteith uccle = PenmanMonteith.of(
            MadeWeather.sunny(MadeWeather.windy(uccleJuly, 2.78), 9.25), new WeatherStation(50 + 48 / 60.0, 100, 10));

    @Test
    @DisplayName("Example 18: wind at 2 m, psychrometric constant, vapour pressures")
    void uccleAirAndWind() {
        assertThat(uccle.windAtTwoMetres()).isCloseTo(2.078, within(0.002)); // the paper rounds its factor to 0.748
        assertThat(uccle.psychrometricConstant()).isCloseTo(0.0666, within(0.00005));
        assertThat(uccle.saturationSlope()).isCloseTo(0.122, within(0.0005));
        assertThat(uccle.meanSaturationKilopascals()).isCloseTo(1.997, within(0.0005));
        assertThat(uccle.actualKilopascals()).isCloseTo(1.409, within(0.0005));
    }

    @Test
    @DisplayName("Example 18: radiation from above the atmosphere down to what the grass keeps")
    void uccleRadiation() {
        assertThat(uccle.extraterrestrialRadiation()).isCloseTo(41.09, within(0.005));
        assertThat(uccle.daylightHours()).isCloseTo(16.1, within(0.05));
        assertThat(uccle.solarRadiation()).isCloseTo(22.07, within(0.01)); // the paper goes on with N rounded to 16.1
        assertThat(uccle.clearSkyRadiation()).isCloseTo(30.90, within(0.005));
        assertThat(uccle.netShortwave()).isCloseTo(17.0, within(0.05));
        assertThat(uccle.netLongwave()).isCloseTo(3.71, within(0.005));
        assertThat(uccle.netRadiation()).isCloseTo(13.28, within(0.01)); // a difference of two rounded values there
    }

    @Test
    @DisplayName("Example 18: ETo 3.88 mm/day")
    void uccleEvapotranspiration() {
        assertThat(uccle.etoMillimetres()).isCloseTo(3.88, within(0.005));
    }

    /** What a station measures leads to the same: the example's own R_s 22.07 MJ/m² and e_a 1.409 kPa. */
    @Test
    @DisplayName("Example 18 from radiation and dew point: ETo 3.88 mm/day")
    void uccleAsAStationMeasuresIt() {
        double dewPoint = Fao56.dewPointCelsius(1.409);
        PenmanMonteith measured = PenmanMonteith.of(
                MadeWeather.measured(MadeWeather.windy(uccleJuly, 2.78), 22.07, dewPoint),
                new WeatherStation(50 + 48 / 60.0, 100, 10));
        assertThat(measured.actualKilopascals()).isCloseTo(1.409, within(1e-9));
        assertThat(measured.netRadiation()).isCloseTo(13.28, within(0.01));
        assertThat(measured.etoMillimetres()).isCloseTo(3.88, within(0.005));
    }

    @Test
    @DisplayName("Equation 14, table 2.3: saturated at 1 and 25 °C with 0.657 and 3.168 kPa (recalled)")
    void theDewPointIsWhereAirIsSaturated() {
        assertThat(Fao56.dewPointCelsius(0.657)).isCloseTo(1.0, within(0.02));
        assertThat(Fao56.dewPointCelsius(3.168)).isCloseTo(25.0, within(0.01));
    }

    @Test
    @DisplayName("Example 2: 1800 m above the sea, 81.8 kPa")
    void pressure() {
        assertThat(Fao56.pressureKilopascals(1800)).isCloseTo(81.8, within(0.05));
    }

    /** Steps recalled. */
    @Test
    @DisplayName("Example 3: 24.5 and 15 °C, 3.075 and 1.705 kPa, in the mean 2.39 kPa; at 19.75 °C 2.30 kPa")
    void saturation() {
        assertThat(Fao56.saturationKilopascals(24.5)).isCloseTo(3.075, within(0.0005));
        assertThat(Fao56.saturationKilopascals(15)).isCloseTo(1.705, within(0.0005));
        assertThat(Fao56.meanSaturationKilopascals(24.5, 15)).isCloseTo(2.39, within(0.005));
        assertThat(Fao56.saturationKilopascals((24.5 + 15) / 2)).isCloseTo(2.30, within(0.005));
    }

    /** Recalled; the engine takes no wet bulb, so that only the steps that it has are here. */
    @Test
    @DisplayName("Example 4: 1200 m, 87.9 kPa; the wet bulb's 19.5 °C, 2.267 kPa")
    void wetBulb() {
        assertThat(Fao56.pressureKilopascals(1200)).isCloseTo(87.9, within(0.05));
        assertThat(Fao56.saturationKilopascals(19.5)).isCloseTo(2.267, within(0.0005));
    }

    /** Recalled. */
    @Test
    @DisplayName("Example 5: 25 and 18 °C, 54 and 82 %: 3.168 and 2.064 kPa, actual 1.70 kPa")
    void actual() {
        assertThat(Fao56.saturationKilopascals(25)).isCloseTo(3.168, within(0.0005));
        assertThat(Fao56.saturationKilopascals(18)).isCloseTo(2.064, within(0.0005));
        assertThat(Fao56.actualKilopascals(25, 18, 82, 54)).isCloseTo(1.70, within(0.005));
    }

    /** Declination and hour angle recalled. */
    @Test
    @DisplayName("Examples 8 and 9: 20°S, 3 September (day 246), 0.120 and 1.527 rad, 32.2 MJ/m² and 11.7 h")
    void southernSun() {
        assertThat(Fao56.declination(246)).isCloseTo(0.120, within(0.0005));
        assertThat(Fao56.sunsetHourAngle(-20, 246)).isCloseTo(1.527, within(0.0005));
        assertThat(Fao56.extraterrestrialRadiation(-20, 246)).isCloseTo(32.2, within(0.05));
        assertThat(Fao56.daylightHours(-20, 246)).isCloseTo(11.7, within(0.05));
    }

    @Test
    @DisplayName("Example 10: Rio de Janeiro, 22°54'S, mid May (day 135), 220 h of sun in the month: 14.45 MJ/m²")
    void solarRadiation() {
        double above = Fao56.extraterrestrialRadiation(-22.9, 135);
        double daylight = Fao56.daylightHours(-22.9, 135);
        assertThat(above).isCloseTo(25.1, within(0.05));
        assertThat(daylight).isCloseTo(10.9, within(0.05));
        // the paper rounds R_a to 25.1, n to 7.1 and N to 10.9 on the way
        assertThat(Fao56.solarRadiation(220 / 31.0, daylight, above)).isCloseTo(14.45, within(0.02));
    }

    @Test
    @DisplayName("Example 11: the same month, 25.1 and 19.1 °C, e_a 2.1 kPa, R_s 14.5, R_so 18.8: 3.5 MJ/m²")
    void netLongwave() {
        assertThat(Fao56.clearSkyRadiation(0, 25.1)).isCloseTo(18.8, within(0.05));
        assertThat(Fao56.netLongwave(25.1, 19.1, 2.1, 14.5, 18.8)).isCloseTo(3.5, within(0.05));
    }

    /** Recalled. */
    @Test
    @DisplayName("Example 12: the same month, 11.1 MJ/m² of sunlight kept, 7.6 MJ/m² in all")
    void netRadiation() {
        double kept = Fao56.netShortwave(14.5);
        assertThat(kept).isCloseTo(11.1, within(0.1)); // 11.165, cut off there
        assertThat(kept - Fao56.netLongwave(25.1, 19.1, 2.1, 14.5, 18.8)).isCloseTo(7.6, within(0.05));
    }

    /** Recalled. */
    @Test
    @DisplayName("Example 17: Bangkok, 2 m, April, 34.8 and 25.6 °C: 0.246 kPa/°C, 101.3 kPa, 0.0674 kPa/°C, e_s 4.42")
    void bangkokAir() {
        assertThat(Fao56.saturationSlope(30.2)).isCloseTo(0.246, within(0.0005));
        assertThat(Fao56.pressureKilopascals(2)).isCloseTo(101.3, within(0.05));
        assertThat(Fao56.psychrometricConstant(101.3)).isCloseTo(0.0674, within(0.00005));
        assertThat(Fao56.saturationKilopascals(34.8)).isCloseTo(5.56, within(0.005));
        assertThat(Fao56.saturationKilopascals(25.6)).isCloseTo(3.28, within(0.005));
        assertThat(Fao56.meanSaturationKilopascals(34.8, 25.6)).isCloseTo(4.42, within(0.005));
    }

    /** Recalled. Each step goes on with the figures as printed. */
    @Test
    @DisplayName("Example 17: 13°44'N, mid April (day 105), 8.5 h of sun, e_a 2.85 kPa, down to 14.33 MJ/m²")
    void bangkokRadiation() {
        assertThat(Fao56.extraterrestrialRadiation(13 + 44 / 60.0, 105)).isCloseTo(38.06, within(0.005));
        assertThat(Fao56.daylightHours(13 + 44 / 60.0, 105)).isCloseTo(12.31, within(0.005));
        assertThat(Fao56.solarRadiation(8.5, 12.31, 38.06)).isCloseTo(22.65, within(0.01)); // 22.655 cut off there
        assertThat(Fao56.clearSkyRadiation(2, 38.06)).isCloseTo(28.54, within(0.01)); // 28.547, as above
        assertThat(Fao56.netShortwave(22.65)).isCloseTo(17.44, within(0.005));
        assertThat(Fao56.netLongwave(34.8, 25.6, 2.85, 22.65, 28.54)).isCloseTo(3.11, within(0.005));
        assertThat(Fao56.netShortwave(22.65) - Fao56.netLongwave(34.8, 25.6, 2.85, 22.65, 28.54))
                .isCloseTo(14.33, within(0.005));
    }

    /**
     * Recalled. The soil takes 0.14 MJ/m² of it, a month's figure that the paper derives from March; it adds two
     * rounded summands.
     */
    @Test
    @DisplayName("Example 17: wind of 2 m/s, 1.57 kPa short of saturation: 5.72 mm/day")
    void bangkokEvapotranspiration() {
        assertThat(Fao56.etoMillimetres(0.246, 14.33 - 0.14, 0.0674, 30.2, 2, 4.42 - 2.85))
                .isCloseTo(5.72, within(0.01));
    }

    /** Recalled. */
    @Test
    @DisplayName("Example 18: 21.5 and 12.3 °C, 2.564 and 1.431 kPa; 100.1 kPa")
    void uccleSteps() {
        assertThat(Fao56.saturationKilopascals(21.5)).isCloseTo(2.564, within(0.0005));
        assertThat(Fao56.saturationKilopascals(12.3)).isCloseTo(1.431, within(0.0005));
        assertThat(Fao56.pressureKilopascals(100)).isCloseTo(100.1, within(0.05));
    }

    @Test
    @DisplayName("Example 14: 3.2 m/s at 10 m is 2.4 m/s at 2 m")
    void wind() {
        assertThat(Fao56.windAtTwoMetres(3.2, 10)).isCloseTo(2.4, within(0.05));
    }

    /** Hargreaves and Samani 1985, in a copy: 32 and 18 °C, R_a 16 mm/day. */
    @Test
    @DisplayName("Hargreaves: 5.9 mm/day")
    void hargreaves() {
        assertThat(Hargreaves.etoMillimetres(32, 18, 16)).isCloseTo(5.9, within(0.05));
    }
}
