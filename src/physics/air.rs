//! Moist air: dew point, wet bulb, humidity ratio, enthalpy; mixed air; vent temperature.
