//! scratch
#[test]
fn dump() {
    let value = bayleaf::spec::schema::schema();
    std::fs::write("/tmp/w/schema-out.json", serde_json::to_string_pretty(&value).unwrap()).unwrap();
    let mut s = String::new();
    for (t, keys) in bayleaf::spec::schema::keys() { s += &format!("[{t}] {keys:?}\n"); }
    std::fs::write("/tmp/w/schema-keys.txt", s).unwrap();
}
