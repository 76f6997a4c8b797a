package value

import (
	"regexp"
	"strings"
)

// gaugeUnit is a gauge and its unit with a blank between.
var gaugeUnit = regexp.MustCompile(`\b([0-9]{1,2}|[1-4]/0) (AWG|awg|Awg|GA|ga|Ga|gauge)\b`)

// GaugesJoined writes the units of gauges right behind their numbers, so that a blank parts no number from what it counts: "red 12 AWG".
func GaugesJoined(text string) string {
	for _, unit := range []string{" AWG", " awg", " Awg", " GA", " ga", " Ga"} {
		if strings.Contains(text, unit) {
			return gaugeUnit.ReplaceAllString(text, "$1$2")
		}
	}
	return text // most texts
}
