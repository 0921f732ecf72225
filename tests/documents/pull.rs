//! What a pull list says: one row a copy, in the order of a walk.

use bayleaf::document::{Because, Edition, Pull, PullList, compose_pull_list};
use bayleaf::words::Words;
use expect_test::expect_file;

use super::{demo, text_of};

fn pull(id: &str, place: &str, holder: &str, values: usize) -> Pull {
    let because = (0..values).map(|index| Because {
        key: format!("sensor.curlew-evap.key-{index}"),
        old: if index == 0 { String::new() } else { "2.2 kΩ ± 5 %".to_owned() },
        new: "2.4 kΩ ± 5 %".to_owned(),
    });
    Pull {
        id: id.to_owned(),
        title: "Evaporator outlet air temperature sensor".to_owned(),
        old: 1,
        new: (id != "CUR-GONE").then_some(2),
        holder: holder.to_owned(),
        place: place.to_owned(),
        because: because.collect(),
    }
}

#[test]
fn a_pull_list_goes_through_the_building_once() {
    let (model, words) = (demo(), Words::english());
    let date = "2026-11-24".parse().expect("a date");
    let context = Edition::of(&model, &words).context(&model, &words, date);
    let copies = vec![
        pull("CUR-EVAP", "Bay 10, wall", "Day shift", 1),
        pull("CUR-MIX", "", "", 1),
        pull("CUR-GONE", "Bay 2, wall", "Day shift", 0),
        pull("CUR-C2", "Bay 10, wall", "Day shift", 9),
        pull("CUR-EVAP", "Van 3, folder", "J. Marsh (invented)", 1),
    ];
    let why = "Pull-up corrected after measurement".to_owned();
    let list = PullList { date, number: 2, by: "WB".to_owned(), why, copies };
    let text = text_of(&compose_pull_list(context, &list));
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/documents");
    expect_file![folder.join("PULL-LIST.txt")].assert_eq(&text);
}
