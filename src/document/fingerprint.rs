//! A short code for what a document says, whatever its date and layout.

/// Digits and capitals without those that are mistaken for one another.
const ALPHABET: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/// How many of them: 40 bits, for telling two issues of one card apart.
const LENGTH: usize = 8;

/// The first 40 bits of a digest, five to a character, in two groups.
pub(crate) fn code(digest: &[u8]) -> String {
    let bits = digest.iter().take(5).fold(0_u64, |bits, byte| bits << 8 | u64::from(*byte));
    let character = |index: usize| {
        let five = bits >> (5 * (LENGTH - 1 - index)) & 31;
        usize::try_from(five).ok().and_then(|five| ALPHABET.get(five)).copied().map_or('?', char::from)
    };
    let text: String = (0..LENGTH).map(character).collect();
    let (first, second) = text.split_at(LENGTH / 2);
    format!("{first}-{second}")
}

#[cfg(test)]
mod tests {
    use sha2::{Digest, Sha256};

    use super::*;

    #[test]
    fn code_is_the_head_of_the_digest_in_base_32() {
        // SHA-256 of nothing begins e3b0c44298 (FIPS 180-4 example, from memory):
        // 11100 01110 11000 01100 01000 10000 10100 11000.
        assert_eq!(code(&Sha256::digest([])), "WERC-8GMR");
    }
}
