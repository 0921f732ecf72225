//! Steps of a blower motor, and the heat in the transistor before it.
