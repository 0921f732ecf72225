//! `print --format png` and `svg`, `preview`: pictures of the right size.

use std::fs;
use std::path::Path;

use crate::{GOOD, bayleaf, errors, folder, must_contain, said, write};

/// Width, height and pixels to a metre of a PNG.
fn size(path: &Path) -> (u32, u32, u32) {
    let file = std::io::BufReader::new(fs::File::open(path).expect("it was drawn"));
    let reader = png::Decoder::new(file).read_info().expect("it is a PNG");
    let info = reader.info();
    (info.width, info.height, info.pixel_dims.expect("it knows its size").xppu)
}

#[test]
fn a_card_has_the_pixels_of_its_paper() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD);
    let output = bayleaf(folder.path(), &["print", "--format", "png", "--ppi", "254"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    // A5 is 148 mm × 210 mm (ISO 216): at 254 pixels to the inch ten to a millimetre.
    for page in ["SEN-1-1.png", "SEN-1-2.png"] {
        assert_eq!(size(&folder.path().join("out").join(page)), (1480, 2100, 10_000));
    }
    assert!(!folder.path().join("out/SEN-1.pdf").exists());
    let output = bayleaf(folder.path(), &["print", "--format", "svg", "--jobs", "2"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    let svg = fs::read_to_string(folder.path().join("out/SEN-1-1.svg")).expect("it was drawn");
    must_contain(&svg, "<svg");
    for wrong in ["10", "a", "-200", "1e9"] {
        let output = bayleaf(folder.path(), &["print", "--format", "png", "--ppi", wrong]);
        assert_eq!(output.status.code(), Some(2));
    }
}

#[test]
fn a_preview_is_one_picture_of_all_pages() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD);
    let output = bayleaf(folder.path(), &["preview", "SEN-1", "--ppi", "127"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    assert_eq!(said(&output).trim(), "SEN-1.png");
    let (width, height, per_metre) = size(&folder.path().join("SEN-1.png"));
    assert_eq!((width, per_metre), (740, 5000));
    assert!(height >= 2 * 1050, "{height}");
    let output = bayleaf(folder.path(), &["preview", "SEN-2"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "SEN-1");
    let output = bayleaf(folder.path(), &["preview", "SEN-1", "--out", "no/such/folder/x.png"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "cannot write to `no/such/folder/x.png`");
}
