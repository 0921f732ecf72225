//! The pins of a part by what each of them does, as `connector/pin`.

use super::reader::Reader;
use super::value::Sourced;

/// What a pin of an actuator, light sensor, transducer or switched load does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// Carries the reading.
    Signal,
    /// Carries the reference.
    Reference,
    /// Leads back to the control unit's ground.
    Return,
    /// To measure against.
    Ground,
    /// One side of the motor.
    MotorPlus,
    /// The other side of the motor.
    MotorMinus,
    /// One of the position contacts, by its index.
    Contact(usize),
    /// What the position contacts lead to.
    Common,
    /// The pin of a load that is switched.
    Control,
    /// The pin of a load that is fed.
    Feed,
    /// The feed of a relay's contact.
    ContactIn,
    /// The load of a relay's contact.
    ContactOut,
}

impl Role {
    /// Whether nothing else may hang on such a pin.
    #[must_use]
    pub fn is_own(self) -> bool {
        matches!(
            self,
            Self::Signal
                | Self::MotorPlus
                | Self::MotorMinus
                | Self::Contact(_)
                | Self::Control
                | Self::ContactOut
        )
    }

    /// The word table's id of the role.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Signal => "fact-signal-pin",
            Self::Reference => "fact-reference-pin",
            Self::Return => "fact-return-pin",
            Self::Ground => "fact-ground-pin",
            Self::MotorPlus | Self::MotorMinus => "fact-motor-pin",
            Self::Contact(_) => "fact-contact-pin",
            Self::Common => "fact-common-pin",
            Self::Control => "fact-control-pin",
            Self::Feed => "fact-feed-pin",
            Self::ContactIn => "fact-contact-in-pin",
            Self::ContactOut => "fact-contact-out-pin",
        }
    }
}

/// One pin and what it does.
#[derive(Debug, Clone)]
pub struct RolePin {
    /// What it does.
    pub role: Role,
    /// The spec key below the part's own table, such as `pins.signal`.
    pub key: String,
    /// Connector and pin.
    pub pin: Sourced<String>,
}

/// The keys of a part that only reads something.
pub(super) const READING: &[(&str, Role)] = &[
    ("signal", Role::Signal),
    ("reference", Role::Reference),
    ("return", Role::Return),
    ("ground", Role::Ground),
];

/// The keys of an actuator.
pub(super) const MOVING: &[(&str, Role)] = &[
    ("signal", Role::Signal),
    ("reference", Role::Reference),
    ("return", Role::Return),
    ("ground", Role::Ground),
    ("motor_plus", Role::MotorPlus),
    ("motor_minus", Role::MotorMinus),
    ("common", Role::Common),
];

/// The keys of a switched load.
pub(super) const SWITCHED: &[(&str, Role)] =
    &[("control", Role::Control), ("feed", Role::Feed), ("ground", Role::Ground)];

/// The keys of a relay, which switches a contact of its own.
pub(super) const RELAY: &[(&str, Role)] = &[
    ("control", Role::Control),
    ("feed", Role::Feed),
    ("ground", Role::Ground),
    ("contact_in", Role::ContactIn),
    ("contact_out", Role::ContactOut),
];

/// Reads the pins of one end, `pins` or such, each under the key of its role.
pub(super) fn read(reader: &Reader<'_>, end: &'static str, roles: &[(&'static str, Role)]) -> Vec<RolePin> {
    let Some(pins) = reader.table(end) else { return Vec::new() };
    let pin = |&(key, role): &(&'static str, Role)| {
        let pin = pins.sourced_text(key)?;
        Some(RolePin { role, key: format!("{end}.{key}"), pin })
    };
    let found = roles.iter().filter_map(pin).collect();
    pins.finish();
    found
}
