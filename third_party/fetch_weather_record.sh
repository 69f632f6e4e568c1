#!/bin/sh
# Fetches the daily weather record that tests/game/weather_record_test.cpp measures a climate against,
# and prints nothing when it is already there. Usage: fetch_weather_record.sh FOLDER.
# npm is used as it is set up here, so no host name stands in this file.
set -eu
folder=${1:?usage: fetch_weather_record.sh FOLDER}
package=vega-datasets
version=2.7.0
record=seattle-weather.csv
sha256=0845078a290b48e3149ab8639966824110a251db4e06fc144c06ebb534af23be

is_right() { echo "$sha256  $folder/$record" | sha256sum --check --status 2>/dev/null; }

is_right && exit 0
mkdir -p "$folder"
if ! command -v npm >/dev/null; then
    echo "The weather record needs npm (Debian package npm) to be fetched." >&2
    exit 1
fi
if ! npm pack --silent --pack-destination "$folder" "$package@$version" >"$folder/log" 2>&1; then
    cat "$folder/log" >&2
    echo "The weather record ($package $version) could not be fetched; the lines above say why." >&2
    exit 1
fi
tar -xzf "$folder/$package-$version.tgz" -C "$folder" --strip-components=2 "package/data/$record"
rm -f "$folder/$package-$version.tgz" "$folder/log"
if ! is_right; then
    echo "The weather record $folder/$record does not have the expected SHA-256." >&2
    exit 1
fi
