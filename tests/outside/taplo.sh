#!/usr/bin/env bash
# The demo set, a new set and a slip in it, as the language server taplo sees them. By hand:
# it takes taplo from PyPI (`pip`), and says so where that cannot be had.
set -euo pipefail
cd "$(dirname "$0")/../.."
bayleaf=$(realpath "${BAYLEAF:-target/release/bayleaf}")
work=$(mktemp -d); trap 'rm -rf "$work"' EXIT
if ! { python3 -m venv "$work/v" && "$work/v/bin/pip" -q install taplo==0.9.3; } >"$work/log" 2>&1; then
  echo "skipped: taplo cannot be fetched: $(tail -1 "$work/log")"; exit 0
fi
taplo() { "$work/v/bin/taplo" lint "$@" >"$work/log" 2>&1; }
"$bayleaf" schema >"$work/spec.schema.json"
taplo --schema "file://$work/spec.schema.json" specs/*.toml specs/*/*.toml || { cat "$work/log"; exit 1; }
"$bayleaf" new "$work/new" >/dev/null
cd "$work/new"
# The schema is found by the first line of each file alone.
taplo ./*.toml || { cat "$work/log"; exit 1; }
sed -i 's/resistor = "4.7 kΩ/rsistor = "4.7 kΩ/' system.toml
if taplo ./*.toml; then echo "a misspelt key was not seen"; exit 1; fi
grep -q "'rsistor' was unexpected" "$work/log" || { cat "$work/log"; exit 1; }
sed -i 's/rsistor = "4.7 kΩ/resistor = "4.7 kV/' system.toml
if taplo ./*.toml; then echo "a wrong unit was not seen"; exit 1; fi
echo "demo and new set valid; a misspelt key and a wrong unit seen"
