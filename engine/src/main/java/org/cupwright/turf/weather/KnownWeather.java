package org.cupwright.turf.weather;

/** A day's weather and what it rests on. */
public record KnownWeather(WeatherDay weather, WeatherSource source) {}
