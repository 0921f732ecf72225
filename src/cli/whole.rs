//! Files that are written whole or not at all.

use std::fs::Permissions;
use std::io::{self, Write};
use std::path::Path;

/// Writes a file to the side, then renames it.
pub(super) fn write(folder: &Path, name: &str, bytes: &[u8]) -> io::Result<()> {
    let mut file = temporary(folder)?;
    file.write_all(bytes)?;
    file.persist(folder.join(name)).map_err(|error| error.error)?;
    Ok(())
}

/// A file beside the real ones that vanishes if it is not renamed.
pub(super) fn temporary(folder: &Path) -> io::Result<tempfile::NamedTempFile> {
    let mut builder = tempfile::Builder::new();
    builder.prefix(".bayleaf-").suffix(".part");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // As any new file: the user's mask decides, not the library's privacy.
        builder.permissions(Permissions::from_mode(0o666));
    }
    builder.tempfile_in(folder)
}
