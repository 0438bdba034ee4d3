package org.cupwright.app.desk.turf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.cupwright.turf.weather.Rain;
import org.cupwright.turf.weather.RecordedWeather;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherSeries;

/**
 * Recorded weather as bytes, numbers within gzip, whose check sum finds damage; read by the build that wrote them only. What is not
 * known is NaN.
 */
final class RecordedWeatherBytes {
    private RecordedWeatherBytes() {}

    static byte[] write(RecordedWeather weather) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(new GZIPOutputStream(bytes, 1 << 16))) {
            write(weather.entered(), out);
            write(weather.forecasts(), out);
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return bytes.toByteArray();
    }

    private static void write(WeatherSeries series, DataOutputStream out) throws IOException {
        out.writeInt(series.days().size());
        for (WeatherDay day : series.days()) {
            out.writeLong(day.day().toEpochDay());
            out.writeDouble(day.highestCelsius());
            out.writeDouble(day.lowestCelsius());
            out.writeDouble(day.highestHumidityPercent().orElse(Double.NaN));
            out.writeDouble(day.lowestHumidityPercent().orElse(Double.NaN));
            out.writeDouble(day.windMetresPerSecond().orElse(Double.NaN));
            out.writeDouble(day.sunshineHours().orElse(Double.NaN));
            out.writeDouble(day.radiationMegajoules().orElse(Double.NaN));
            out.writeDouble(day.rain().map(Rain::millimetres).orElse(Double.NaN));
            out.writeBoolean(day.rain().map(Rain::trace).orElse(false));
        }
    }

    /** Empty when the bytes are damaged. */
    static Optional<RecordedWeather> read(byte[] bytes) {
        try (DataInputStream in =
                new DataInputStream(new ByteArrayInputStream(whole(new ByteArrayInputStream(bytes))))) {
            return Optional.of(new RecordedWeather(series(in), series(in)));
        } catch (IOException | IllegalArgumentException | DateTimeException damaged) {
            return Optional.empty();
        }
    }

    /** To the end, so that the check sum is looked at. */
    private static byte[] whole(ByteArrayInputStream bytes) throws IOException {
        try (GZIPInputStream in = new GZIPInputStream(bytes, 1 << 16)) {
            return in.readAllBytes();
        }
    }

    private static WeatherSeries series(DataInputStream in) throws IOException {
        List<WeatherDay> days = new ArrayList<>();
        for (int left = in.readInt(); left > 0; left--) {
            days.add(day(in));
        }
        return WeatherSeries.of(days);
    }

    private static WeatherDay day(DataInputStream in) throws IOException {
        return new WeatherDay(
                LocalDate.ofEpochDay(in.readLong()),
                in.readDouble(),
                in.readDouble(),
                number(in),
                number(in),
                number(in),
                number(in),
                number(in),
                rain(in.readDouble(), in.readBoolean()));
    }

    private static OptionalDouble number(DataInputStream in) throws IOException {
        double value = in.readDouble();
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static Optional<Rain> rain(double millimetres, boolean trace) {
        return Double.isNaN(millimetres) ? Optional.empty() : Optional.of(new Rain(millimetres, trace));
    }
}
