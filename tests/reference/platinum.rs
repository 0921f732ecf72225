//! Platinum and silicon sensors against their standard and their makers' tables.
