package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invented tables of weather are taken into the logbook (the course's today is 2026-06-20). */
class WeatherCommandIT {
    private static final String TABLE = "date,tmax,tmin,rain\n2026-05-01,18.5,7.2,0\n2026-05-02,20.1,9,T\n"
            + "2026-05-03,17,8.4,\n2026-05-05,16.2,6.6,12.4\n";

    @TempDir
    private Path files;

    private TableDesk desk;
    private InProcess cupwright;

    @BeforeEach
    void aCourse() throws IOException {
        desk = new TableDesk(files, 1);
        cupwright = desk.cupwright();
    }

    private Result read(String text, Object... more) throws IOException {
        return desk.read("weather", text, more);
    }

    private String list() {
        return desk.list();
    }

    @Test
    void aDryRunSaysWhatThereIsAndKeepsNothing() throws IOException {
        assertThat(read(TABLE).out())
                .contains("4 days read, Fri 1 May 2026 to Tue 5 May 2026")
                .contains("One day between them is missing")
                .contains("One day has no rain figure")
                .contains("New: 4;")
                .contains("dry run");
        assertThat(list()).contains("No entries");
    }

    @Test
    void whatIsKeptIsKeptOnceAndOtherValuesCorrectIt() throws IOException {
        assertThat(read(TABLE, "--yes").out()).contains("Kept: 4 new, 0 corrected; 0 were the same");
        assertThat(read(TABLE, "--yes", "--person", "other").out())
                .contains("Kept: 0 new, 0 corrected; 4 were the same");
        String other = TABLE.replace("12.4", "13.9");
        assertThat(read(other).out()).contains("to be corrected: 1; the same already: 3");
        assertThat(read(other, "--yes").out()).contains("0 new, 1 corrected; 3 were");
        assertThat(list()).contains("13.9").doesNotContain("12.4");
        assertThat(read(TABLE, "--yes").out()).contains("0 new, 1 corrected; 3 were");
        assertThat(list()).contains("12.4").doesNotContain("13.9");
        assertThat(list().lines().filter(line -> line.contains("2026-05"))).hasSize(4);
    }

    /** By hand: 170 W/m² are 14.688 MJ/m² over a day, 350 Ly 14.654, 4.1 kWh 14.76; 54 °F are 12.22 °C. */
    @Test
    void radiationDewPointAndVapourPressureAreTakenAsStationsWriteThem() throws IOException {
        String head = "date,tmax,tmin,";
        assertThat(read(head + "Solar radiation (W/m²),Dew point (°F)\n2026-05-01,21.5,9,170,54\n", "--yes")
                        .out())
                .contains("radiation W/m2, dewpoint F");
        assertThat(read(head + "rs_Ly,ea_hPa\n2026-05-02,21.5,9,350,14.09\n", "--yes")
                        .out())
                .contains("radiation Ly, vapourpressure hPa");
        assertThat(read(head + "radiation (kWh/m2)\n2026-05-03,21.5,9,4.1\n", "--yes")
                        .out())
                .contains("radiation kWh/m2");
        assertThat(list().replaceAll("\\s+", " "))
                .contains("14.7 MJ/m² of sun · dew point 12.2 °C")
                .contains("14.7 MJ/m² of sun · dew point 12.1 °C")
                .contains("14.8 MJ/m² of sun");
        assertThat(read(head + "dewpoint\n2026-05-04,11.5,9,14\n").out())
                .contains("the dew point, 14 °C, is above the highest temperature, 11.5 °C");
    }

    @Test
    void otherNamesUnitsAndSeparatorsAreUnderstood() throws IOException {
        assertThat(read("date,temp_max,temp_min\n2026-04-01,12,3\n").out())
                .contains("one day reads")
                .contains("Read as: tmax C, tmin C.");
        String american = "Day;Hi;TMin (°F);Precip_in\n1.5.2026;68,0;50;0,5\n";
        Result result = read(american, "--column", "tmax=Hi", "--unit", "tmax=F", "--yes", "--json");
        assertThat(result.out())
                .as(result.err())
                .contains("\"added\" : 1")
                .contains("\"tmin\" : \"F\"")
                .contains("\"rain\" : \"in\"");
        String stored = cupwright
                .run("log", "list", "--from", "2026-05-01", "--to", "2026-05-01", "--json")
                .out();
        assertThat(stored)
                .containsPattern("\"highestCelsius\" : 20(\\.0)?\\b")
                .containsPattern("\"lowestCelsius\" : 10(\\.0)?\\b")
                .contains("12.7");
    }

    @Test
    void linesThatCannotBeAreNamedAndTheRestIsOffered() throws IOException {
        Result result = read("date,tmax,tmin,rain\n"
                + "2026-05-01,18,7,0\n"
                + "2026-02-30,18,7,0\n"
                + "2026-05-03,7,18,0\n"
                + "2026-05-04,18,7,-3\n"
                + "2026-05-01,19,7,0\n"
                + "2026-06-20,18,7,0\n"
                + "2026-05-07,NA,7,0\n"
                + "2026-05-08,82,61,0\n"
                + "2026-05-09,warm,7,0\n"
                + "2026-05-10,18");
        assertThat(result.status()).isZero();
        assertThat(result.out())
                .contains("one day reads")
                .contains("9 lines do not read")
                .contains("line 3: There is no day 2026-02-30: that month has 28 days.")
                .contains("line 4: The lowest temperature, 18, is above the highest")
                .contains("line 5: Rain cannot be negative: -3")
                .contains("line 6: 2026-05-01 stands in the file already")
                .contains("line 7: 2026-06-20 is not over yet")
                .contains("line 8: No temperature stands under tmax")
                .contains("line 9: What it says cannot be")
                .contains("line 10: \"warm\" is not a number")
                .contains("line 11: The file ends within this line");
    }

    @Test
    void whatIsNoTableOfWeatherIsRefused() throws IOException {
        assertThat(read("").err()).contains("empty");
        assertThat(read("date,rain\n2026-05-01,3\n").err())
                .contains("no column for tmax, tmin")
                .contains("--column");
        assertThat(read(TABLE, "--column", "tmax=Hi").err()).contains("no column for Hi");
        assertThat(read(TABLE, "--column", "heat=tmax").err()).contains("Known are date, tmax");
        assertThat(read(TABLE, "--unit", "tmax=K").err()).contains("Known are C, F");
        assertThat(read(TABLE, "--unit", "wind=mph").err()).contains("no column wind");
        assertThat(read(TABLE, "--unit", "date=h").err()).contains("no column date");
        assertThat(read("\u0000\u0001").err()).contains("not text");
        assertThat(list()).contains("No entries");
        assertThat(cupwright.run("weather").status()).isEqualTo(2);
    }

    private static String days(String from, int count, String rest) {
        LocalDate first = LocalDate.parse(from);
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < count; i++) {
            lines.append(first.plusDays(i)).append(',').append(rest).append('\n');
        }
        return lines.toString();
    }

    @Test
    void aForecastIsKeptBesideWhatWasAndCountsUntilTheDayIsEntered() throws IOException {
        read("date,tmax,tmin,rain\n" + days("2026-06-05", 15, "20,10,0"), "--yes");
        String forecast = "date,tmax,tmin,rain\n" + days("2026-06-20", 3, "28,16,12");
        assertThat(read(forecast).out()).contains("line 2: 2026-06-20 is not over yet");
        assertThat(read(forecast, "--forecast").out())
                .contains("3 days of forecast read, Sat 20 Jun 2026 to Mon 22 Jun 2026")
                .contains("New: 3;")
                .contains("dry run");
        assertThat(list()).doesNotContain("forecast");
        assertThat(read(forecast, "--forecast", "--yes").out()).contains("Kept: 3 new, 0 heard anew");
        assertThat(read(forecast, "--forecast", "--yes").out()).contains("Kept: 0 new, 0 heard anew");
        assertThat(read(forecast.replace("22,28", "22,31"), "--forecast", "--yes")
                        .out())
                .contains("Kept: 0 new, 1 heard anew with other values; 2 were the same already.");
        assertThat(cupwright.run("weather", "list").out())
                .contains("Mon 22 Jun 2026       31.0     16.0     12.0        –  forecast")
                .contains("Of these days: 13 as entered, 3 forecast.")
                .doesNotContain("before today");
        assertThat(cupwright.run("turf", "--all", "--date", "2026-06-24").out())
                .contains("Weather of the 28 days up to Wed 24 Jun 2026: 15 as entered, 3 forecast,")
                .contains("assumed.");
        assertThat(cupwright.run("weather", "list", "--date", "2026-06-10").out())
                .contains("Thu 28 May 2026")
                .contains("Wed 10 Jun 2026")
                .doesNotContain("Thu 11 Jun 2026");
        String eve = cupwright.run("turf", "--date", "2026-06-22", "--json").out();
        assertThat(eve).contains("\"forecast\" : 3").contains("\"weather\" : \"forecast\"");
        assertThat(eve).as("rain that is foretold has not fallen").contains("\"deficitMillimetres\" : null");
        assertThat(cupwright
                        .run("weather", "list", "--from", "2026-06-01", "--to", "2026-06-06")
                        .out())
                .contains("Mon 1 Jun 2026           –        –        –        –  nothing known")
                .contains("4 days before today have no entry");
    }

    @Test
    void whatNobodyCanForetellIsRefused() throws IOException {
        assertThat(read("date,tmax,tmin\n2026-06-19,20,10\n2026-08-01,20,10\n2026-06-20,20,10\n", "--forecast")
                        .out())
                .contains("line 2: 2026-06-19 is over; a forecast is of today and later.")
                .contains("line 3: 2026-08-01 is more than 30 days ahead")
                .contains("one day of forecast reads");
    }

    @Test
    void theListTellsTraceFromNoneAndCountsGaps() throws IOException {
        read(TABLE, "--yes");
        Result list = cupwright.run("weather", "list", "--from", "2026-05-01", "--to", "2026-05-05");
        assertThat(list.out())
                .containsPattern("1 May 2026 +18.5 +7.2 +0.0 +– +as entered")
                .containsPattern("2 May 2026 +20.1 +9.0 +trace")
                .containsPattern("3 May 2026 +17.0 +8.4 +–")
                .containsPattern("4 May 2026 +16.6 +7.5 +– +– +filled in")
                .contains("Of these days: 4 as entered, 1 filled in between neighbours.")
                .contains("One day before today has no entry");
        assertThat(cupwright
                        .run("weather", "list", "--from", "2026-05-05", "--to", "2026-05-01")
                        .err())
                .contains("is after");
        assertThat(cupwright.run("weather", "list", "--from", "0001-05-05").err())
                .contains("That would be 739");
    }
}
